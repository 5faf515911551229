package lockwright.testsheet;

/** One side of an entry that is tried: 3 of {@code docs/meaning.md}. */
public enum Aspect {
  RELEASE_WANTING("release wanting", true),
  RELEASED("released", false),
  BACK_LOCK("back lock", true),
  OTHER_RELEASE("back lock off, another gives the release", false),
  LOCK("lock", true),
  LOCK_OFF("lock off", false),
  CONVERSE("converse", true),
  CONVERSE_OFF("converse off", false),
  HELD_NORMAL("both ways: held normal", true),
  HELD_REVERSED("both ways: held reversed", true),
  FREE_NORMAL("both ways off: free from normal", false),
  FREE_REVERSED("both ways off: free from reversed", false),
  CONDITION_NOT_MET("condition not met", false),
  CONDITION_LEVER("held by its condition", true),
  PIECE_HOLDS_NORMAL("piece holds normal", true),
  PIECE_HOLDS_REVERSED("piece holds reversed", true),
  ORDER("order", true),
  ORDER_KEPT("order kept", false),
  ORDER_OVER("free once the other has started", false),
  ROTATION("rotation", true),
  ROTATION_KEPT("rotation kept", false);

  private final String words;
  private final boolean held;

  Aspect(String words, boolean held) {
    this.words = words;
    this.held = held;
  }

  public String words() {
    return words;
  }

  /** Whether the lever is to be held; else it is to be free. */
  public boolean held() {
    return held;
  }
}
