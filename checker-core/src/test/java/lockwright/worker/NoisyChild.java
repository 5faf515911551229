package lockwright.worker;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * A child like any other, while something prints to its standard output past Java, without line
 * ends.
 */
final class NoisyChild {
  private NoisyChild() {}

  public static void main(String[] arguments) throws Exception {
    Thread noise = new Thread(NoisyChild::print, "noise");
    noise.setDaemon(true);
    noise.start();
    Child.main(arguments);
  }

  private static void print() {
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    try {
      while (true) {
        out.write("(smt.noise :done 1)".getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      // The parent does not listen any more.
    }
  }
}
