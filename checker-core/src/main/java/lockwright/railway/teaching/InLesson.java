package lockwright.railway.teaching;

import lockwright.spec.Span;

/**
 * The trainer's words in a lesson that is made by itself.
 *
 * @param requirement the id of the requirement that is broken, or of the route that can be cleared
 */
public record InLesson(String requirement, Words words, Span at) {}
