package org.swathbook.cli.html;

import java.util.List;
import java.util.Optional;
import org.swathbook.cli.text.FindingText;

/**
 * What the template of a plan is filled with.
 *
 * @param overview one row a field; empty for a single field
 */
public record PlanPage(SheetHead head, List<List<Marked>> overview, List<FieldPart> fields) {

  /**
   * A field with its programs.
   *
   * @param field id, name, grower, crop and acres
   * @param notes what the adviser noted on weeds
   * @param standing in one line: recommended, or what stands in the way
   * @param stops broken house rules and what loosening one would allow; rules that refuse the field
   * @param houseRulesCost on an acre, where the house rules cost anything
   * @param first the program shown in full
   * @param why what goes wrong without each pass and product
   * @param others the other programs, in no order of worth
   * @param fronts what more money buys, drawn for a wide and for a narrow page
   * @param asked answers on actives that were asked about
   * @param search how the programs were found
   */
  public record FieldPart(
      String field,
      List<String> facts,
      List<List<String>> weeds,
      List<String> notes,
      String standing,
      List<String> stops,
      FindingText.Shown refusals,
      Optional<Marked> houseRulesCost,
      Optional<ProgramPart> first,
      List<List<Marked>> why,
      List<Card> others,
      List<Drawing> fronts,
      List<List<Marked>> steps,
      List<Card> asked,
      List<Marked> search) {

    public FieldPart {
      facts = List.copyOf(facts);
      weeds = List.copyOf(weeds);
      notes = List.copyOf(notes);
      stops = List.copyOf(stops);
      why = List.copyOf(why);
      others = List.copyOf(others);
      fronts = List.copyOf(fronts);
      steps = List.copyOf(steps);
      asked = List.copyOf(asked);
      search = List.copyOf(search);
    }
  }

  /**
   * A program in a few lines.
   *
   * @param lines verdict, money, control, house rules
   * @param passes date and actives
   * @param givesUp against the first program, or why there is none
   */
  public record Card(
      String title,
      List<Marked> lines,
      List<List<Marked>> passes,
      List<Marked> givesUp,
      FindingText.Shown findings) {

    public Card {
      lines = List.copyOf(lines);
      passes = List.copyOf(passes);
      givesUp = List.copyOf(givesUp);
    }
  }

  public PlanPage {
    overview = List.copyOf(overview);
    fields = List.copyOf(fields);
  }
}
