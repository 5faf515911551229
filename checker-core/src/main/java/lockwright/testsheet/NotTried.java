package lockwright.testsheet;

/** Something that the sheet does not try, or not for itself alone, and why. */
public record NotTried(Trial trial, String why) {}
