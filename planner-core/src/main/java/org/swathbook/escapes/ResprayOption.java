package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;

/**
 * One tank that may go on the survivors: a product, or two of different sites.
 *
 * @param failedSite its site was in the pass that failed
 * @param effective sites of it that the house rules call effective on the survivors, each alone
 * @param earliest first sensible and legal day
 * @param latest last day of the legal days that follow; the look ahead ends after eight weeks
 * @param heightCm that nine plants in ten of the survivors' weeds do not exceed on the first day,
 *     by the model: at this height the control is reckoned
 * @param tooTall products whose label ends below that height, or below what stems that were sprayed
 *     and grew again may stand at, in words
 * @param controlPct of the survivors by the model, percent
 * @param costPerAcre products, pass and the extra of an unplanned pass
 * @param savesPerAcre yield loss that it spares, before its cost
 * @param published what published resprays gave; empty where none is known
 */
public record ResprayOption(
    List<Dose> doses,
    boolean failedSite,
    List<Site> effective,
    LocalDate earliest,
    LocalDate latest,
    double heightCm,
    List<String> tooTall,
    double controlPct,
    Money costPerAcre,
    Money savesPerAcre,
    Optional<String> published) {

  public ResprayOption {
    doses = List.copyOf(doses);
    effective = List.copyOf(effective);
    tooTall = List.copyOf(tooTall);
  }

  /** Sites of action, one for each product. */
  public List<Site> sites() {
    return doses.stream().map(d -> d.actives().get(0).ingredient().site()).toList();
  }

  public boolean isTank() {
    return doses.size() > 1;
  }

  /** For a defined order among equals. */
  String key() {
    return String.join(" ", doses.stream().map(d -> d.product().id().value()).toList());
  }
}
