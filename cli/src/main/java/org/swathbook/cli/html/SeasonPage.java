package org.swathbook.cli.html;

import java.util.List;

/**
 * What the template of a walked season is filled with.
 *
 * @param field id, name, grower, crop and acres
 * @param facts of the field, one sentence each
 * @param weeds rows: name, code, density, driver, resistance
 * @param notes what the adviser noted on weeds
 */
public record SeasonPage(
    SheetHead head,
    String field,
    List<String> facts,
    List<List<String>> weeds,
    List<String> notes,
    ProgramPart program) {

  public SeasonPage {
    facts = List.copyOf(facts);
    weeds = List.copyOf(weeds);
    notes = List.copyOf(notes);
  }
}
