package lockwright.explain;
import java.nio.file.Path;
import lockwright.railway.*;
import lockwright.report.explain.*;
import lockwright.walk.Walks;
import org.junit.jupiter.api.Test;
class ScratchTest {
  @Test void x() {
    for (String b : new String[]{"quillby","brindlewick","corlhaven"}) {
      Box box = BoxBuilder.read(Path.of("..","examples","proved",b,"box")).box().orElseThrow();
      for (String[] q : new String[][]{{"","2"},{"9,2","11"},{"","11"},{"","24"},{"22","1"},{"8,9,2","12"},{"2,9","3"},{"12,8","9"},{"3,4","6"}}) {
        Asked a = Asked.written(q[0],"",q[1]);
        if (!a.faults(box).isEmpty()) { System.out.println(ExplanationText.faults(a.faults(box))); continue; }
        long t=System.nanoTime();
        ExplanationText.lines(Explanation.of(box,a,200000),"box/").forEach(System.out::println);
        System.out.println((System.nanoTime()-t)/1000000+" ms\n");
      }
    }
  }
}
