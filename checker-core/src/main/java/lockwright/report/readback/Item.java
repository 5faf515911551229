package lockwright.report.readback;

/**
 * One line of the read-back: of a thing of a kind ("signal", "2"), what is said ("stands") and how
 * it is ("at approach > junction"). Items about one thing follow one another.
 */
record Item(String kind, String name, String what, String value) {}
