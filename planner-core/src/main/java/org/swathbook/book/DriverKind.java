package org.swathbook.book;

/**
 * Whether a weed decides the program of a field; a zero weed is one of which no survivor is
 * accepted.
 */
public enum DriverKind {
  YES,
  NO,
  ZERO;

  public boolean isDriver() {
    return this != NO;
  }
}
