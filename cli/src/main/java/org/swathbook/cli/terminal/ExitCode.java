package org.swathbook.cli.terminal;

/** What the program tells the shell; the same numbers for every command. */
public final class ExitCode {
  /** Done, and nothing that was asked about is blocked. */
  public static final int DONE = 0;

  /** Done, and what was asked about is blocked or refused, or has errors. */
  public static final int BLOCKED = 1;

  /** The input or the call is wrong; nothing was done. */
  public static final int WRONG_INPUT = 2;

  /** The program itself failed. */
  public static final int OUR_FAULT = 3;

  private ExitCode() {}
}
