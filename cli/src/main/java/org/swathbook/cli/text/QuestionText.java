package org.swathbook.cli.text;

/** A question, or a word between questions, as it stands on the terminal. */
public final class QuestionText {
  private QuestionText() {}

  /** Lines that fit the page; what does not fit goes on, indented. */
  public static String of(String said) {
    return new Page().line(said).toString();
  }
}
