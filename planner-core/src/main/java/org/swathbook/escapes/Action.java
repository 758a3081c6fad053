package org.swathbook.escapes;

/** What to do about what was seen. */
public enum Action {
  DONE("done"),
  WAIT("wait"),
  RESPRAY("respray"),
  STOP_SEED("stop-seed");

  private final String word;

  Action(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
