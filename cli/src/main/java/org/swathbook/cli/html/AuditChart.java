package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.swathbook.audit.RankedSites;
import org.swathbook.audit.SeasonSites;
import org.swathbook.cli.text.AuditWords;

/** Fields and seasons by effective sites of action on their driver weeds. */
final class AuditChart {
  static final double WIDE = 760;
  static final double NARROW = 368;

  private static final double ROW = 34;
  private static final double HEAD = 20;

  private AuditChart() {}

  /**
   * @param ranked seasons of each field and weed, those that lean most first
   * @param at where each stands in the JSON document
   */
  static Drawing of(
      List<List<RankedSites>> ranked,
      SortedSet<Integer> seasons,
      Function<RankedSites, String> at,
      double width) {
    Drawing.Pen pen = new Drawing.Pen();
    double left = width < 500 ? 104 : 190;
    double cell = (width - left) / seasons.size();
    List<Integer> columns = new ArrayList<>(seasons);
    for (int c = 0; c < columns.size(); c++) {
      int season = columns.get(c);
      String any =
          ranked.stream()
              .flatMap(List::stream)
              .filter(r -> r.sites().season() == season)
              .findFirst()
              .map(r -> at.apply(r) + "/season")
              .orElse("");
      pen.label(
          left + cell * (c + 0.5), 13, "middle", "month", Marked.of(Integer.toString(season), any));
    }
    double y = HEAD;
    for (List<RankedSites> row : ranked) {
      SeasonSites any = row.get(0).sites();
      pen.label(
          0,
          y + 13,
          "start",
          "weed",
          Marked.of(
              AuditWords.place(row.get(0)) + any.field().id(), at.apply(row.get(0)) + "/rank"));
      pen.label(0, y + 26, "start", "small", any.weed().weed().name());
      for (RankedSites r : row) {
        cell(pen, r, at.apply(r), left + cell * columns.indexOf(r.sites().season()), y, cell);
      }
      y += ROW;
    }
    return pen.drawing(
        "Effective sites of action by field, driver weed and season; the same figures stand in the"
            + " tables below.",
        width,
        y + 2);
  }

  private static void cell(
      Drawing.Pen pen, RankedSites r, String at, double x, double y, double width) {
    SeasonSites s = r.sites();
    boolean leans = s.effective().size() < 2;
    double wide = width - 4;
    pen.box(
        x + 2,
        y + 2,
        wide,
        ROW - 4,
        "cell",
        Marked.of(s.season() + ": " + r.reason(), at + "/season", at + "/reason"));
    s.met()
        .ifPresent(
            m ->
                pen.box(
                    x + 2,
                    y + ROW - 8,
                    wide * Math.min(1, (m.nonePct() + m.onePct()) / 100),
                    6,
                    "lean"));
    pen.box(x + 2, y + 2, wide, ROW - 4, leans ? "edge heavy" : "edge");
    int n = s.effective().size();
    String sites = (n == 0 ? "" : n == 1 ? "site " : "sites ") + AuditWords.sites(s.effective());
    boolean fits = sites.length() * 6 < wide - 6;
    pen.label(
        x + width / 2,
        y + 13,
        "middle",
        "size",
        fits
            ? Marked.of(
                sites,
                IntStream.range(0, n)
                    .mapToObj(i -> at + "/effectiveSites/" + i)
                    .toArray(String[]::new))
            : Marked.of(n + " sites", at + "/effectiveSites"));
    pen.label(
        x + width / 2,
        y + 24,
        "middle",
        "year",
        s.met()
            .map(
                m ->
                    Marked.of(
                        AuditWords.percent(m.nonePct() + m.onePct()),
                        at + "/emergenceMetPct/none+" + at + "/emergenceMetPct/one"))
            .orElse(Marked.plain("not walked")));
  }
}
