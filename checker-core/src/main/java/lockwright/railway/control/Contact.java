package lockwright.railway.control;

/** One thing that a lever lock or an arm control needs; {@code docs/meaning.md} 2.9. */
public sealed interface Contact {
  /** As in the spec: "Platform clear", "arm 3 at danger". */
  String words();

  /** A condition from outside is met. */
  record Outside(String condition) implements Contact {
    @Override
    public String words() {
      return condition;
    }
  }

  /** Another arm is proved at danger: surely on. */
  record ArmAtDanger(String signal) implements Contact {
    @Override
    public String words() {
      return "arm " + signal + " at danger";
    }
  }

  /** Another arm is proved off: surely off. */
  record ArmOff(String signal) implements Contact {
    @Override
    public String words() {
      return "arm " + signal + " off";
    }
  }
}
