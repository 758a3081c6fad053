package org.swathbook.cli;

/** What the program tells the shell; the same numbers for every command. */
final class ExitCode {
  /** Done, and nothing that was asked about is blocked. */
  static final int DONE = 0;

  /** Done, and what was asked about is blocked or refused, or has errors. */
  static final int BLOCKED = 1;

  /** The input or the call is wrong; nothing was done. */
  static final int WRONG_INPUT = 2;

  /** The program itself failed. */
  static final int OUR_FAULT = 3;

  private ExitCode() {}
}
