package org.swathbook.cli.html;

import java.util.List;

/** What the template of the grower's handout is filled with: a page a farm, then a page a field. */
public record HandoutPage(SheetHead head, List<Farm> farms) {

  /**
   * A grower with what is to be bought.
   *
   * @param passes rows by date: date, field, acres, products
   * @param order rows: product, amount, on hand, cost
   * @param cost of all passes and products
   */
  public record Farm(
      String grower,
      List<List<Marked>> passes,
      List<List<Marked>> order,
      Marked cost,
      List<Sheet> fields) {

    public Farm {
      passes = List.copyOf(passes);
      order = List.copyOf(order);
      fields = List.copyOf(fields);
    }
  }

  /**
   * A field in plain words.
   *
   * @param standing in one line: recommended, or what stands in the way
   * @param fight weeds
   * @param lost what no longer works here
   * @param binds what the grower has to keep to
   * @param spoils what could go wrong
   * @param cost rows of money
   * @param version of this program
   * @param changes since the version that the book keeps
   */
  public record Sheet(
      String field,
      String standing,
      List<String> fight,
      List<String> lost,
      List<Going> passes,
      List<String> binds,
      List<Marked> spoils,
      List<List<Marked>> cost,
      String version,
      List<String> changes) {

    public Sheet {
      fight = List.copyOf(fight);
      lost = List.copyOf(lost);
      passes = List.copyOf(passes);
      binds = List.copyOf(binds);
      spoils = List.copyOf(spoils);
      cost = List.copyOf(cost);
      changes = List.copyOf(changes);
    }

    /**
     * How closely it is set on paper, so that a field takes one sheet: by the lines that it fills,
     * roughly, with thresholds found by printing (ours).
     */
    public String setting() {
      double lines = 0;
      for (Going pass : passes) {
        lines += 5 + 1.3 * pass.words().mix().size();
      }
      int letters =
          binds.stream().mapToInt(String::length).sum()
              + spoils.stream().mapToInt(m -> m.words().length()).sum();
      lines += letters / 110.0; // two columns of them
      if (lines <= 40) {
        return "roomy";
      }
      return lines <= 54 ? "" : lines <= 64 ? "full" : "full packed";
    }
  }

  /**
   * A pass as the grower sees it coming.
   *
   * @param date in words
   * @param signs by crop and weeds
   */
  public record Going(PassPart words, Marked date, List<Marked> signs) {
    public Going {
      signs = List.copyOf(signs);
    }
  }

  public HandoutPage {
    farms = List.copyOf(farms);
  }
}
