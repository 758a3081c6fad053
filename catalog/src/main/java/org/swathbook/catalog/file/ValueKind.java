package org.swathbook.catalog.file;

/** What a value is in the file of {@link ValueWriter}; the sign stands in front of it. */
enum ValueKind {
  TEXT('t'),
  NUMBER('n'),
  COUNT('c'),
  YES('y'),
  NO('f'),
  DATE('d'),
  MONTH_DAY('a'),
  NOTHING('e'),
  SOMETHING('o'),
  NO_NUMBER('E'),
  SOME_NUMBER('O'),
  NO_COUNT('I'),
  SOME_COUNT('i'),
  LIST('l'),
  SET('s'),
  MAP('m'),
  SORTED_MAP('M'),
  CLASS('C'),
  CONSTANT('k'),
  RECORD('r');

  private final char sign;

  ValueKind(char sign) {
    this.sign = sign;
  }

  char sign() {
    return sign;
  }

  /** All kinds, each at the place of its sign. */
  static ValueKind[] bySign() {
    ValueKind[] out = new ValueKind['z' + 1];
    for (ValueKind k : values()) {
      out[k.sign] = k;
    }
    return out;
  }
}
