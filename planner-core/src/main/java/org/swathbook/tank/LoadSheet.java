package org.swathbook.tank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.program.SprayJob;

/**
 * All that somebody needs who fills a sprayer, as far as it is known: facts, no verdict. Whether
 * the tank may be sprayed at all is for the rules to say.
 *
 * @param acres that are sprayed with it
 * @param tankGallons what the tank holds
 * @param loads in the order of {@code split}
 * @param together what all loads take, to be brought from the shed
 * @param before clean-out after what the sprayer held before; empty when that is not known
 * @param after what this tank asks for
 */
public record LoadSheet(
    SprayJob job,
    double acres,
    double gallonsPerAcre,
    double tankGallons,
    LoadSplit split,
    List<TankLoad> loads,
    TankLoad together,
    MixingOrder order,
    WaterTreatment water,
    JarTest jar,
    Optional<CleanOuts> before,
    CleanOuts after,
    LongestReentry reentry,
    RestrictedUse restricted,
    ProtectiveEquipment protection) {

  public LoadSheet {
    loads = List.copyOf(loads);
  }

  /**
   * @param partners actives of the job's mix, each with the terms under which it is sprayed
   * @throws MeasureException in words, when the mix leaves no room for water or an adjuvant is
   *     written by weight and by volume
   * @throws IllegalArgumentException when the job has no spray volume, or as {@link LoadSplit#of}
   */
  public static LoadSheet of(
      Book book, SprayJob job, List<Partner> partners, double acres, double tankGallons) {
    double perAcre =
        job.mix()
            .gallonsPerAcre()
            .orElseThrow(() -> new IllegalArgumentException("a load needs a spray volume"));
    LoadSplit split = LoadSplit.of(acres, perAcre, tankGallons);
    MixingOrder order = MixingOrder.of(job.mix(), job.carrier().liquid());
    Map<ProductId, Quantity> packages = packages(book);
    return new LoadSheet(
        job,
        acres,
        perAcre,
        tankGallons,
        split,
        split.loads().stream().map(size -> TankLoad.of(job.mix(), size, packages)).toList(),
        TankLoad.of(job.mix(), new LoadSize(acres * perAcre, acres), packages),
        order,
        WaterTreatment.of(job.mix(), perAcre, job.carrier(), partners),
        JarTest.of(job.mix(), job.carrier().liquid(), perAcre, order, partners),
        job.tank().lastLoad().map(ids -> CleanOuts.of(actives(book, job))),
        CleanOuts.after(partners),
        LongestReentry.of(partners),
        RestrictedUse.of(partners),
        ProtectiveEquipment.of(job.mix().doses()));
  }

  private static List<Ingredient> actives(Book book, SprayJob job) {
    return job.tank().lastLoad().orElseThrow().stream().map(book.catalog()::ingredient).toList();
  }

  private static Map<ProductId, Quantity> packages(Book book) {
    Map<ProductId, Quantity> out = new TreeMap<>();
    book.prices()
        .stock()
        .forEach((id, stock) -> stock.packageSize().ifPresent(size -> out.put(id, size)));
    return out;
  }
}
