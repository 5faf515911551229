package lockwright.railway.teaching;

import java.util.List;

/**
 * What the trainer has written for the lessons of a box. No part of the box, and none of its check.
 *
 * @param introduction his words before all lessons; empty, if there are none
 * @param closing the same, after them
 * @param lessons his words in lessons on what is broken, and on how a route is cleared
 * @param whyNots the lessons that he asks for
 * @param digest SHA-256 of the file, in hexadecimal; empty, if there is none
 */
public record Teaching(
    String introduction,
    String closing,
    List<InLesson> lessons,
    List<WhyNot> whyNots,
    String digest) {
  /** Of a box without the file. */
  public static final Teaching NONE = new Teaching("", "", List.of(), List.of(), "");

  public Teaching {
    lessons = List.copyOf(lessons);
    whyNots = List.copyOf(whyNots);
  }
}
