package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.TankTerms.CleanOut;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.program.SprayerTank;
import org.swathbook.tank.CleanOuts;
import org.swathbook.tank.LoadSheet;

/** How the sprayer has to be cleaned before these loads and after them. */
final class CleanOutText {
  private final LoadSheet sheet;
  private final List<Section.Item> items = new ArrayList<>();

  CleanOutText(LoadSheet sheet) {
    this.sheet = sheet;
  }

  Section of(Field field) {
    items.add(new Section.Heading("Clean-out before"));
    before(field);
    items.add(new Section.Heading("Clean-out after"));
    after();
    return new Section(items);
  }

  private void line(int level, String words) {
    items.add(new Section.Line(level, words));
  }

  private void before(Field field) {
    SprayerTank tank = sheet.job().tank();
    if (sheet.before().isEmpty()) {
      line(1, "What the sprayer held is NOT KNOWN; ask before loading.");
      return;
    }
    List<CleanOuts.Row> rows = sheet.before().get().rows();
    if (rows.isEmpty()) {
      line(1, "The sprayer held nothing that matters.");
      return;
    }
    line(
        1,
        "The sprayer held "
            + Figures.list(rows.stream().map(r -> r.ingredient().name()).toList())
            + tank.cleaned()
                .map(r -> "; cleaned since by " + LoadWords.rinse(r) + ".")
                .orElse("; how it was cleaned since is NOT KNOWN."));
    for (CleanOuts.Row r : rows) {
      Optional<CleanOut> stated = r.stated().find();
      String asks =
          r.stated().isUnknown()
              ? "NOT KNOWN"
              : stated
                  .filter(c -> c.sensitive().contains(field.crop()))
                  .map(c -> LoadWords.rinse(c.least()) + " before " + field.crop().value())
                  .orElse("nothing before " + field.crop().value());
      line(2, r.ingredient().name() + ": " + asks);
    }
  }

  private void after() {
    CleanOuts after = sheet.after();
    line(
        1,
        after
                .strictest()
                .map(
                    r -> "At least " + LoadWords.rinse(r) + ", the most that any of these asks for")
                .orElse("None of these is known to ask for more than an empty tank")
            + (after.unknown().isEmpty()
                ? ""
                : "; NOT KNOWN of " + Figures.list(after.unknown()) + ", read it there")
            + ". Tank, lines, screens and boom ends; rinsate onto a labelled field, never a drain or"
            + " a ditch (common practice, no source).");
    for (CleanOuts.Row r : after.rows()) {
      r.stated()
          .find()
          .filter(c -> !c.sensitive().isEmpty())
          .ifPresent(
              c ->
                  line(
                      2,
                      r.ingredient().name()
                          + ": "
                          + LoadWords.rinse(c.least())
                          + " before "
                          + Figures.list(c.sensitive().stream().map(CropId::value).toList())));
    }
  }
}
