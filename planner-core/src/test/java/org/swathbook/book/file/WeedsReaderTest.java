package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Biotype;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;

class WeedsReaderTest {
  private static final String HEADER =
      "field,weed,density,driver,resistantSites,resistantShare,resistance,note\n";

  @TempDir Path dir;

  private WeedPressure weed(String rows) {
    List<WeedPressure> all = new BookOnDisk(dir).with("weeds.csv", HEADER + rows).load().weeds();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  @Test
  void theShortFormIsOneBiotypeThatResistsAllItsSites() {
    WeedPressure w = weed("A-1,Palmer amaranth,80 /m2,zero,2;9,90 %,,west end\n");
    assertThat(w.weed().id().value()).isEqualTo("AMAPA");
    assertThat(w.driver()).isEqualTo(DriverKind.ZERO);
    assertThat(w.perM2()).isEqualTo(80);
    assertThat(w.note()).isEqualTo("west end");
    assertThat(w.biotypes()).hasSize(2);
    assertThat(w.biotypes().get(0).resists()).hasSize(2);
    assertThat(w.biotypes().get(1).share()).isEqualTo(0.1, within(1e-12));
    assertThat(w.listed()).hasSize(2);
  }

  @Test
  void anEmptyShareMeansAllOfIt() {
    assertThat(weed("A-1,AMAPA,80 /m2,yes,9,,,\n").biotypes())
        .extracting(Biotype::share)
        .containsExactly(1.0);
  }

  @Test
  void densitiesPerAcreAndPerSquareFootMeanTheSame() {
    assertThat(weed("A-1,AMAPA,1 /ft2,yes,,,,\n").perM2()).isEqualTo(10.7639, within(1e-4));
    assertThat(weed("A-1,AMAPA,4046.8564224 /acre,yes,,,,\n").perM2()).isEqualTo(1, within(1e-12));
  }

  @Test
  void entriesOfOneCellAreIndependent() {
    WeedPressure w = weed("A-1,AMAPA,80 /m2,yes,,,2:60 % confirmed; 9:20 %,\n");
    assertThat(w.biotypes().stream().map(b -> Math.round(b.share() * 1e6)).toList())
        .containsExactly(120_000L, 480_000L, 80_000L, 320_000L);
    assertThat(w.listed()).extracting(Resistance::status).containsExactly("confirmed", "");
  }

  @Test
  void aSingleIngredientMayBeWhatIsResisted() {
    WeedPressure w = weed("A-1,AMAPA,80 /m2,yes,,,dicamba:30 % Suspected,\n");
    assertThat(w.listed().get(0).ingredient()).contains(IngredientId.of("dicamba"));
    assertThat(w.listed().get(0).status()).isEqualTo("suspected");
  }

  @Test
  void whatResistantPlantsKeepStandsBehindTheStatus() {
    WeedPressure w =
        weed(
            "A-1,AMAPA,80 /m2,yes,,,27:60 % confirmed keeps 40 %; 14:50 % keeps 0 % leaf 50 %"
                + " soil; 15:20 % Suspected Metabolic; 2:90 % target-site; 9:10 % metabolic keeps"
                + " 30 %,\n");
    assertThat(w.listed())
        .extracting(Resistance::kept)
        .containsExactly(
            Optional.of(new Resistance.Kept(0.4, 0.4)),
            Optional.of(new Resistance.Kept(0, 0.5)),
            Optional.of(Resistance.Kept.METABOLIC),
            Optional.empty(),
            Optional.of(new Resistance.Kept(0.3, 0.3)));
    assertThat(w.listed())
        .extracting(Resistance::status)
        .containsExactly("confirmed", "", "suspected", "", "");
  }

  @Test
  void oldSiteNumbersMeanTheCurrentOnes() {
    assertThat(weed("A-1,AMAPA,80 /m2,yes,7,50 %,,\n").listed().get(0).site().orElseThrow())
        .hasToString("5");
  }

  @Test
  void rowsOfOneWeedAddBiotypesAndTheRestIsSusceptible() {
    WeedPressure w =
        weed(
            """
            A-1,AMAPA,80 /m2,yes,2;9,60 %,,first
            A-1,AMAPA,,,14,15 %,,
            A-1,amapa,80 /m2,yes,,,4:10 %; 22:10 %,third
            """);
    // 4:10 % and 22:10 % are independent: 1 % both, 9 % only the one, 9 % only the other.
    assertThat(w.biotypes().stream().map(b -> Math.round(b.share() * 100)).toList())
        .containsExactly(60L, 15L, 1L, 9L, 9L, 6L);
    assertThat(w.biotypes().get(5).resists()).isEmpty();
    assertThat(w.listed()).hasSize(5);
    assertThat(w.note()).isEqualTo("first; third");
  }
}
