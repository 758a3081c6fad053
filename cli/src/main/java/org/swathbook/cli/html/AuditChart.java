package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
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
   */
  static Drawing of(List<List<RankedSites>> ranked, SortedSet<Integer> seasons, double width) {
    Drawing.Pen pen = new Drawing.Pen();
    double left = width < 500 ? 104 : 190;
    double cell = (width - left) / seasons.size();
    List<Integer> columns = new ArrayList<>(seasons);
    for (int c = 0; c < columns.size(); c++) {
      pen.label(left + cell * (c + 0.5), 13, "middle", "month", Integer.toString(columns.get(c)));
    }
    double y = HEAD;
    for (List<RankedSites> row : ranked) {
      SeasonSites any = row.get(0).sites();
      pen.label(0, y + 13, "start", "weed", AuditWords.place(row.get(0)) + any.field().id());
      pen.label(0, y + 26, "start", "small", any.weed().weed().name());
      for (RankedSites r : row) {
        cell(pen, r, left + cell * columns.indexOf(r.sites().season()), y, cell);
      }
      y += ROW;
    }
    return pen.drawing(
        "Effective sites of action by field, driver weed and season; the same figures stand in the"
            + " tables below.",
        width,
        y + 2);
  }

  private static void cell(Drawing.Pen pen, RankedSites r, double x, double y, double width) {
    SeasonSites s = r.sites();
    boolean leans = s.effective().size() < 2;
    double wide = width - 4;
    pen.box(x + 2, y + 2, wide, ROW - 4, "cell", s.season() + ": " + r.reason());
    s.met()
        .ifPresent(
            m ->
                pen.box(
                    x + 2,
                    y + ROW - 8,
                    wide * Math.min(1, (m.nonePct() + m.onePct()) / 100),
                    6,
                    "lean",
                    ""));
    pen.box(x + 2, y + 2, wide, ROW - 4, leans ? "edge heavy" : "edge", "");
    int n = s.effective().size();
    String sites = (n == 0 ? "" : n == 1 ? "site " : "sites ") + AuditWords.sites(s.effective());
    boolean fits = sites.length() * 6 < wide - 6;
    pen.label(x + width / 2, y + 13, "middle", "size", fits ? sites : n + " sites");
    pen.label(
        x + width / 2,
        y + 24,
        "middle",
        "year",
        s.met().map(m -> AuditWords.percent(m.nonePct() + m.onePct())).orElse("not walked"));
  }
}
