package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.JudgedMix;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.CheckText;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.LoadSections;
import org.swathbook.cli.text.LoadText;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.cli.text.Section;
import org.swathbook.measure.Numbers;
import org.swathbook.program.SprayJob;
import org.swathbook.tank.LoadSheet;

/** The sheet of {@code load} for a printer, on one or two letter pages. */
public final class LoadHtml {
  private static final String NOT_SAID = "not said";

  private LoadHtml() {}

  /**
   * @param sheet empty for a blocked tank: then the verdict is all
   */
  public static String of(
      Book book, ReportHead head, Field field, JudgedMix judged, Optional<LoadSheet> sheet) {
    List<Section> sections = sheet.map(s -> LoadSections.of(field, s)).orElse(List.of());
    int loads = (int) sections.stream().filter(LoadHtml::isOfLoads).count();
    String verdict = judged.judgement().verdict().word();
    LoadPage page =
        new LoadPage(
            SheetHead.of(
                "Load sheet, " + field.id() + ", " + ProgramWords.date(judged.job().date()), head),
            CheckText.jobLine(book, field, judged.job()),
            settings(verdict, judged.job(), sheet),
            sheet.isEmpty(),
            new FindingText(book.catalog()).shown(judged.judgement(), LoadText::belongsOnTheSheet),
            // The first section says how the acres are cut; the loads follow it.
            sections.subList(0, Math.min(sections.size(), loads + 1)),
            sections.subList(Math.min(sections.size(), loads + 1), sections.size()),
            LoadWords.SIGN_OFF);
    return Pages.fill("load.jte", page);
  }

  /** Steps of a load, or what all loads take. */
  private static boolean isOfLoads(Section section) {
    return section.items().stream().anyMatch(i -> i instanceof Section.Rows r && r.level() == 1);
  }

  private static List<LoadPage.Pair> settings(
      String verdict, SprayJob job, Optional<LoadSheet> sheet) {
    List<LoadPage.Pair> out = new ArrayList<>();
    out.add(pair("Verdict", verdict.toUpperCase(Locale.ROOT)));
    sheet.ifPresent(
        s -> {
          out.add(pair("Acres", LoadWords.acres(s.acres())));
          out.add(pair("Volume", Numbers.decimals(s.gallonsPerAcre(), 1) + " gal/acre"));
          out.add(pair("Tank", LoadWords.gallons(s.tankGallons()) + " gal"));
          out.add(
              pair(
                  "Nobody enters for",
                  s.reentry().hours().isEmpty()
                      ? "NOT KNOWN"
                      : (s.reentry().unknown().isEmpty() ? "" : "at least ")
                          + Numbers.decimals(s.reentry().hours().getAsDouble(), 1)
                          + " hours"));
        });
    out.add(pair("Droplets", job.setup().droplets().map(Object::toString).orElse(NOT_SAID)));
    out.add(
        pair(
            "Speed",
            job.setup().speedMph().isPresent()
                ? Numbers.decimals(job.setup().speedMph().getAsDouble(), 1) + " mph"
                : NOT_SAID));
    out.add(
        pair(
            "Pressure",
            job.setup().pressurePsi().isPresent()
                ? Numbers.decimals(job.setup().pressurePsi().getAsDouble(), 0) + " psi"
                : NOT_SAID));
    return out;
  }

  private static LoadPage.Pair pair(String name, String value) {
    return new LoadPage.Pair(name, value);
  }
}
