package lockwright.spec.form;

import lockwright.spec.form.Form.Key;
import lockwright.spec.form.Form.Shared;
import lockwright.spec.form.Form.Taken;
import lockwright.spec.form.Form.Text;
import lockwright.spec.form.Form.Word;

/** Forms that stand in several files. */
final class Parts {
  /** The number of a lever, as a pattern. */
  static final String NUMBER = "[1-9][0-9]{0,3}[A-Z]?";

  /** The same, or one way of a push-pull lever. */
  static final String MOVED = NUMBER + "(-pull|-push)?";

  private static final String TRACKS = "\\s*[A-Za-z0-9][A-Za-z0-9 _.-]*";

  static final Text PLAIN_NAME =
      Text.of("^[A-Za-z0-9]( ?[A-Za-z0-9_.-])*$").taken(Taken.WHOLE_NUMBER).longest(60);
  static final Form NAME = new Shared("name", PLAIN_NAME);
  static final Form NAMES = new Shared("names", Form.oneOrList(NAME, 1));
  static final Form TEXT = new Shared("text", Text.of("[^ \\t\\n\\r]").taken(Taken.ANYTHING));
  static final Form INSTANCE = new Shared("instance", Text.of("^[a-z ]+: .+$"));
  static final Form JOINT =
      new Shared("joint", Text.of("^" + TRACKS + "\\+" + TRACKS + "$").longest(200));
  static final Form PLACE =
      new Shared("place", Text.of("^" + TRACKS + ">" + TRACKS + "$").longest(200));
  static final Form LEVER = new Shared("lever", lever("^" + MOVED + "$"), "The number of a lever.");
  static final Form YES_NO =
      new Shared("yesNo", new Word("yes", "no"), "Written yes or no, never true or false.");
  static final Key LABEL = Key.may("label", TEXT);

  private Parts() {}

  static Text lever(String pattern) {
    return Text.of(pattern).taken(Taken.WHOLE_NUMBER, 1, 9999);
  }
}
