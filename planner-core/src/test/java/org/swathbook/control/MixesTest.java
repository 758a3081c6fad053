package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Biotype;
import org.swathbook.book.Resistance;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedKind;
import org.swathbook.measure.Rate;
import org.swathbook.testing.Fixtures;

class MixesTest {
  private static final Weed FOXTAIL = Fixtures.weed("SETFA");
  private static final Weed PALMER = Fixtures.weed("AMAPA");

  private static TankActive active(String name, double lb) {
    return new TankActive(
        Fixtures.active(name),
        List.of("SL"),
        Rate.lbPerAcre(lb, Fixtures.active(name).rateBasis()).kgPerHa());
  }

  private static Interaction.Side of(String ingredient) {
    return new Interaction.Side(
        Optional.of(Fixtures.active(ingredient).id()), Optional.empty(), Optional.empty());
  }

  private static Interaction.Side of(int site) {
    return new Interaction.Side(Optional.empty(), Optional.of(Site.of(site)), Optional.empty());
  }

  private static Interaction interaction(
      Interaction.Side one,
      Interaction.Side other,
      WeedKind on,
      Interaction.Kind kind,
      double factor,
      Optional<Interaction.Unless> unless) {
    double share = kind == Interaction.Kind.SYNERGY ? factor : 1 - factor;
    return new Interaction(
        one,
        other,
        Set.of(),
        Optional.of(on),
        kind,
        one,
        Optional.of(new Interaction.Shares(share, share)),
        unless,
        "",
        Source.NOT_GIVEN);
  }

  @Test
  void ofSeveralAntagonismsOnOnePartnerTheStrongestHolds() {
    List<TankActive> tank =
        List.of(active("clethodim", 0.1), active("2,4-D choline", 0.95), active("glyphosate", 1));
    MixInteractions m =
        new MixInteractions(
            tank,
            List.of(
                antagonism(0.8, Optional.empty()),
                antagonism(0.5, Optional.empty()),
                interaction(
                    of("clethodim"),
                    of("atrazine"),
                    WeedKind.GRASS,
                    Interaction.Kind.ANTAGONISM,
                    0.1,
                    Optional.empty())));
    assertThat(m.antagonism(0, FOXTAIL)).isEqualTo(0.5);
    assertThat(m.antagonism(1, FOXTAIL)).isEqualTo(1);
    assertThat(m.antagonism(0, PALMER)).isEqualTo(1);
  }

  @Test
  void aRateCanLiftAnAntagonism() {
    Optional<Interaction.Unless> unless =
        Optional.of(
            new Interaction.Unless(
                Fixtures.active("clethodim").id(), Rate.parse("0.094 lb ai/acre")));
    for (double lb : new double[] {0.05, 0.094, 0.12}) {
      MixInteractions m =
          new MixInteractions(
              List.of(active("clethodim", lb), active("2,4-D choline", 0.95)),
              List.of(antagonism(0.5, unless)));
      assertThat(m.antagonism(0, FOXTAIL)).isEqualTo(lb < 0.094 ? 0.5 : 1);
    }
  }

  private static Interaction antagonism(double factor, Optional<Interaction.Unless> unless) {
    return interaction(
        of("clethodim"), of(4), WeedKind.GRASS, Interaction.Kind.ANTAGONISM, factor, unless);
  }

  @Test
  void aSynergyNeedsBothPartnersAtWork() {
    MixInteractions m =
        new MixInteractions(
            List.of(active("atrazine", 1), active("mesotrione", 0.1)),
            List.of(
                interaction(
                    of(27),
                    of(5),
                    WeedKind.BROADLEAF,
                    Interaction.Kind.SYNERGY,
                    0.7,
                    Optional.empty())));
    assertThat(MixInteractions.remaining(m.synergies(PALMER), new double[] {0.3, 0.2}))
        .isEqualTo(0.7);
    assertThat(MixInteractions.remaining(m.synergies(PALMER), new double[] {1, 0.2})).isEqualTo(1);
    assertThat(m.synergies(FOXTAIL)).isEmpty();
  }

  @Test
  void resistantPlantsFeelNothingButHalfOfSite14InTheSoil() {
    Biotype b =
        new Biotype(
            1,
            List.of(
                new Resistance(Optional.of(Site.of(14)), Optional.empty(), 1, "confirmed"),
                new Resistance(
                    Optional.empty(),
                    Optional.of(Fixtures.active("glyphosate").id()),
                    1,
                    "suspected")));
    assertThat(ResistanceFactors.foliar(PALMER, b, Fixtures.active("flumioxazin"))).isZero();
    assertThat(ResistanceFactors.soil(PALMER, b, Fixtures.active("flumioxazin"))).isEqualTo(0.5);
    assertThat(ResistanceFactors.soil(FOXTAIL, b, Fixtures.active("flumioxazin"))).isZero();
    assertThat(ResistanceFactors.foliar(PALMER, b, Fixtures.active("glyphosate"))).isZero();
    assertThat(ResistanceFactors.foliar(PALMER, b, Fixtures.active("clethodim"))).isEqualTo(1);
  }

  @Test
  void aPartialResistanceKeepsWhatTheBookSays() {
    Biotype b =
        new Biotype(
            1,
            List.of(
                new Resistance(
                    Optional.of(Site.of(14)),
                    Optional.empty(),
                    1,
                    "confirmed",
                    Optional.of(new Resistance.Kept(0.3, 0.8))),
                new Resistance(
                    Optional.empty(),
                    Optional.of(Fixtures.active("glyphosate").id()),
                    1,
                    "",
                    Optional.of(Resistance.Kept.METABOLIC))));
    assertThat(ResistanceFactors.foliar(PALMER, b, Fixtures.active("flumioxazin"))).isEqualTo(0.3);
    assertThat(ResistanceFactors.soil(PALMER, b, Fixtures.active("flumioxazin"))).isEqualTo(0.8);
    assertThat(ResistanceFactors.foliar(PALMER, b, Fixtures.active("glyphosate"))).isEqualTo(0.5);
  }

  /** Metabolic and target-site resistance in one plant: it feels no more than the stronger. */
  @Test
  void ofTwoResistancesToOneActiveTheStrongerCounts() {
    Resistance metabolic =
        new Resistance(
            Optional.of(Site.of(9)),
            Optional.empty(),
            1,
            "",
            Optional.of(Resistance.Kept.METABOLIC));
    Resistance targetSite =
        new Resistance(Optional.empty(), Optional.of(Fixtures.active("glyphosate").id()), 1, "");
    Biotype both = new Biotype(1, List.of(metabolic, targetSite));
    assertThat(ResistanceFactors.foliar(PALMER, both, Fixtures.active("glyphosate"))).isZero();
  }

  @Test
  void aDoseIsMeasuredAgainstTheUseOfItsPhase() {
    TankActive glyphosate = active("glyphosate", 1);
    assertThat(LabelRates.high(glyphosate, Fixtures.field("ND-1"), Position.Phase.IN_CROP))
        .hasValueCloseTo(Rate.parse("1.13 lb ae/acre").kgPerHa(), within(1e-9));
    assertThat(LabelRates.high(glyphosate, Fixtures.field("ND-1"), Position.Phase.BEFORE_EMERGENCE))
        .hasValueCloseTo(Rate.parse("1.5 lb ae/acre").kgPerHa(), within(1e-9));
  }
}
