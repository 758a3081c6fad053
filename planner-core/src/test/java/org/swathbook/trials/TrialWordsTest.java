package org.swathbook.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.file.CatalogLoader;

/** The words in which trials state what they sprayed, when, on what, and when they looked. */
class TrialWordsTest {
  private static final String HEAD =
      "row,trial_id,source,region,crop,weed,weed_biotype,program_type,treatment_actives_rates,"
          + "application_timing,evaluated,days,control_low_pct,control_high_pct,qualifier\n";
  private static final Catalog CATALOG = new CatalogLoader().starter();

  private static TrialRow row(String treatment, String timing, String evaluated, String days) {
    return rows("1,T,s,IL,corn,w,n/s,PRE,\""
            + treatment
            + "\","
            + timing
            + ","
            + evaluated
            + ","
            + days
            + ",80,90,\n")
        .get(0);
  }

  private static List<TrialRow> rows(String lines) {
    return TrialTable.read("t.csv", (HEAD + lines).getBytes(StandardCharsets.UTF_8));
  }

  private static List<List<Spray>> treatments(String treatment, String timing) {
    return new TreatmentText(CATALOG).read(row(treatment, timing, "", ""), List.of()).treatments();
  }

  private static List<String> actives(Spray spray) {
    return spray.parts().stream().map(p -> p.active().value()).toList();
  }

  @Test
  void partnersAndAlternatives() {
    List<List<Spray>> read =
        treatments("mesotrione + atrazine, isoxaflutole or topramezone", "POST");

    assertThat(read).hasSize(3);
    assertThat(read.stream().map(t -> actives(t.get(0))))
        .containsExactly(
            List.of("mesotrione", "atrazine"),
            List.of("mesotrione", "isoxaflutole"),
            List.of("mesotrione", "topramezone"));
  }

  @Test
  void twoPassesWithTheirTimes() {
    List<List<Spray>> read =
        treatments("S-metolachlor fb glyphosate + dicamba", "PRE fb POST 17-23 DAP");

    assertThat(read).hasSize(1);
    assertThat(actives(read.get(0).get(0))).containsExactly("s-metolachlor");
    assertThat(read.get(0).get(0).when().point()).isEqualTo(Spray.Point.PRE);
    assertThat(actives(read.get(0).get(1))).containsExactly("glyphosate", "dicamba");
    assertThat(read.get(0).get(1).when().point()).isEqualTo(Spray.Point.POST);
    assertThat(read.get(0).get(1).when().daysAfterPlanting()).hasValue(20);
  }

  @Test
  void ratesOfAPremixInOneUnit() {
    Spray spray = treatments("S-metolachlor/mesotrione 1393/139 g ai/ha", "PRE").get(0).get(0);

    assertThat(spray.parts().stream().map(p -> p.kgPerHa().orElseThrow()))
        .containsExactly(1.393, 0.139);
  }

  @Test
  void aRatePerAcre() {
    Spray spray = treatments("dicamba 0.5 lb/ac on 5 cm plants", "POST 5 cm").get(0).get(0);

    // 0.5 lb/acre = 0.560 kg/ha by the exact pound and acre.
    assertThat(spray.parts().get(0).kgPerHa().orElseThrow()).isCloseTo(0.5604, within(1e-4));
    assertThat(spray.when().weedCm()).hasValue(5);
  }

  @Test
  void aResprayAfterAFailedPassOnItsDays() {
    List<List<Spray>> read =
        treatments("fomesafen 3, 7 or 11 d after failed glufosinate on 30 cm plants", "respray");

    assertThat(read).hasSize(3);
    assertThat(read.stream().map(t -> t.get(1).when().daysAfterLast()))
        .containsExactly(OptionalDouble.of(3), OptionalDouble.of(7), OptionalDouble.of(11));
    assertThat(actives(read.get(0).get(0))).containsExactly("glufosinate-ammonium");
    assertThat(read.get(0).get(0).when().weedCm()).hasValue(30);
  }

  @Test
  void whatIsNotUnderstoodIsSaid() {
    TreatmentText.Read read =
        new TreatmentText(CATALOG).read(row("glyphosate + wonderstuff", "POST", "", ""), List.of());

    assertThat(read.notUnderstood()).containsExactly("wonderstuff");
    assertThat(read.treatments()).hasSize(1);
  }

  @Test
  void whatTheWeedsResist() {
    assertThat(BiotypeText.of("resistant to groups 2,5,9", CATALOG.findWeed("AMATU").orElseThrow()))
        .extracting(r -> r.site().orElseThrow().number())
        .containsExactly(2, 5, 9);
    assertThat(BiotypeText.of("glyphosate-resistant", CATALOG.findWeed("AMBTR").orElseThrow()))
        .extracting(r -> r.site().orElseThrow().number())
        .containsExactly(9);
    assertThat(BiotypeText.of("not stated", CATALOG.findWeed("AMATU").orElseThrow())).isEmpty();
  }

  @Test
  void whenItWasRated() {
    RatedText planting = RatedText.of(row("x", "PRE", "28 d after planting", "28"), true);
    assertThat(planting.base()).isEqualTo(RatedText.Base.PLANTING);
    assertThat(planting.days()).containsExactly(28.0);
    assertThat(planting.stated()).isTrue();

    RatedText twice = RatedText.of(row("x", "POST", "14 / 28 DAT", "14;28"), false);
    assertThat(twice.days()).containsExactly(14.0, 28.0);
    assertThat(RatedText.of(row("x", "PRE", "8 WAA", "56"), true).days()).containsExactly(56.0);

    RatedText unsaid = RatedText.of(row("x", "POST", "not stated", ""), false);
    assertThat(unsaid.stated()).isFalse();
    assertThat(unsaid.days()).containsExactly(28.0);
  }

  @Test
  void publishedRangesAndTheErrorToThem() {
    List<TrialRow> rows =
        rows(
            """
            1,T,s,IL,corn,w,,,x,,,,80,90,
            2,T,s,IL,corn,w,,,x,,,,98,100,>=
            3,T,s,IL,corn,w,,,x,,,,,83,<=
            4,T,s,IL,corn,w,,,x,,,,,,
            """);

    assertThat(rows.get(0).error(85)).isZero();
    assertThat(rows.get(0).error(72)).isEqualTo(8);
    assertThat(rows.get(0).error(95)).isEqualTo(5);
    assertThat(rows.get(1).error(95)).isEqualTo(3);
    assertThat(rows.get(1).error(100)).isZero();
    assertThat(rows.get(2).error(94)).isEqualTo(11);
    assertThat(rows.get(2).error(20)).isZero();
    assertThat(rows.get(2).isHeldOut()).isTrue();
    assertThat(rows.get(3).isScored()).isFalse();
  }

  @Test
  void ordersBetweenRows() {
    TrialOrdering more = new TrialOrdering(1, TrialOrdering.Relation.MORE, 2, 0, "", "");
    TrialOrdering least = new TrialOrdering(1, TrialOrdering.Relation.LEAST, 2, 0, "", "");
    TrialOrdering within = new TrialOrdering(1, TrialOrdering.Relation.WITHIN, 2, 10, "", "");

    assertThat(more.isKept(50, 50)).isFalse();
    assertThat(more.isKept(51, 50)).isTrue();
    assertThat(least.isKept(50, 50)).isTrue();
    assertThat(least.isKept(49, 50)).isFalse();
    assertThat(within.isKept(81, 91)).isTrue();
    assertThat(within.isKept(80, 91)).isFalse();
  }

  @Test
  void theKeptTablesNameOnlyRowsOfTheTable() {
    List<Integer> rows = Published.rows().stream().map(TrialRow::row).toList();

    assertThat(rows).doesNotHaveDuplicates().hasSizeGreaterThan(40);
    assertThat(Published.orderings())
        .allSatisfy(o -> assertThat(rows).contains(o.better(), o.worse()));
    assertThat(rows).containsAll(Published.why().keySet());
  }
}
