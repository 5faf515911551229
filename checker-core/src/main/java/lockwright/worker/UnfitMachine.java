package lockwright.worker;

/** The solver cannot run on this machine; the message says what and how to mend. */
public final class UnfitMachine extends Exception {
  private static final long serialVersionUID = 1L;

  UnfitMachine(String cause) {
    super(
        "Z3's native library does not load here ("
            + cause
            + "). It serves Linux on x86-64 and ARM64"
            + " with glibc 2.34 or later (Debian 12, Ubuntu 22.04, Fedora 35 or newer; not Alpine),"
            + " macOS 11 or later and Windows on x86-64. On an older Linux, run the build in a container"
            + " of a newer one; if the folder for temporary files forbids execution, allow it.");
  }
}
