package org.swathbook.program;

/** How survivors lie in a field. */
public enum SurvivorPattern {
  SCATTERED("scattered"),
  PATCHES("patches"),
  STRIPS("strips"),
  FIELD_EDGE("field-edge"),
  WHOLE_FIELD("whole-field");

  private final String spelling;

  SurvivorPattern(String spelling) {
    this.spelling = spelling;
  }

  public String spelling() {
    return spelling;
  }
}
