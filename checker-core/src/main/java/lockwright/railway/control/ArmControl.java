package lockwright.railway.control;

import java.util.List;
import lockwright.spec.Span;

/** What holds an arm on whatever its lever does, tested all the time: it needs all of these. */
public record ArmControl(String signal, List<Contact> needs, Span at) {
  public ArmControl {
    needs = List.copyOf(needs);
  }
}
