package org.swathbook.cli.text;

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
  private final Page page;
  private final LoadSheet sheet;

  CleanOutText(Page page, LoadSheet sheet) {
    this.page = page;
    this.sheet = sheet;
  }

  void on(Field field) {
    page.line("Clean-out before");
    before(field);
    page.line("Clean-out after");
    after();
    page.blank();
  }

  private void before(Field field) {
    SprayerTank tank = sheet.job().tank();
    if (sheet.before().isEmpty()) {
      page.line("  What the sprayer held is NOT KNOWN; ask before loading.");
      return;
    }
    List<CleanOuts.Row> rows = sheet.before().get().rows();
    if (rows.isEmpty()) {
      page.line("  The sprayer held nothing that matters.");
      return;
    }
    page.wrapped(
        2,
        4,
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
      page.wrapped(4, 6, r.ingredient().name() + ": " + asks);
    }
  }

  private void after() {
    CleanOuts after = sheet.after();
    page.wrapped(
        2,
        4,
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
                  page.wrapped(
                      4,
                      6,
                      r.ingredient().name()
                          + ": "
                          + LoadWords.rinse(c.least())
                          + " before "
                          + Figures.list(c.sensitive().stream().map(CropId::value).toList())));
    }
  }
}
