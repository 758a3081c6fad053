package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;

/**
 * Quick scores of passes in dollars per acre, by which programs are ordered before they are walked.
 * Of the house rules about sites and overlaps they know nothing.
 *
 * @param net net return, less a little for driver weeds that are not well controlled
 * @param goal net return, less the fines of {@link Goal} as far as a score tells them
 */
public record QuickScore(double net, double goal) {
  /**
   * Dollars per point of control that a driver weed is short of the house level: steers the search,
   * default, ours.
   */
  private static final double PER_POINT_SHORT = 3;

  /**
   * @param passes in the order of their dates
   * @param cents what the products of each cost on an acre
   */
  public static QuickScore of(Book book, Kernel kernel, List<PreparedPass> passes, long[] cents) {
    Score s = kernel.score(passes);
    double dollars = s.weedFreeDollarsPerAcre() - s.lossDollarsPerAcre();
    for (int i = 0; i < cents.length; i++) {
      double met = 1 - passes.get(i).missedYears().size() / (double) s.years();
      dollars -= met * (book.passCost().cents() + cents[i]) / 100;
    }
    List<WeedPressure> weeds = kernel.traces().weeds();
    double goal = dollars - Goal.fine(ScoredMisses.of(book.house(), weeds, s));
    for (int w = 0; w < weeds.size(); w++) {
      if (weeds.get(w).driver().isDriver()) {
        dollars -=
            PER_POINT_SHORT * Math.max(0, 100 * book.house().seasonControl() - s.controlPct(w));
      }
    }
    return new QuickScore(dollars, goal);
  }

  QuickScore less(double dollars) {
    return new QuickScore(net - dollars, goal - dollars);
  }
}
