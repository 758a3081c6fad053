package org.swathbook.rules;

/** How much a finding stands in the way. */
public enum Severity {
  BLOCK,
  WARN,
  ASK,
  NOTE;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
