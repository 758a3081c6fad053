package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.DriverKind;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.WeedKind;
import org.swathbook.testing.Fixtures;

/**
 * What a tank leaves of plants by their height, put together by hand of what its partners do alone:
 * the product over sites of Colby (1967, Weeds 15: 20-22), with what resistance and antagonism take
 * from a partner before it.
 */
class FoliarTableTest {
  private static final WeedPressure PALMER = Fixtures.weed("T", "AMAPA", 50, DriverKind.YES, 0);

  /** Of ten plants nine resist site 9. */
  private static final WeedPressure RESISTANT =
      Fixtures.weed("T", "AMAPA", 50, DriverKind.YES, 0.9, 9);

  private static final double[] NOTHING = alike(0);

  private static double[] alike(double control) {
    double[] out = new double[HeightClasses.COUNT];
    Arrays.fill(out, control);
    return out;
  }

  private static List<TankActive> tank(String... actives) {
    return Stream.of(actives)
        .map(a -> new TankActive(Fixtures.active(a), List.of("SL"), 1))
        .toList();
  }

  private static FoliarTable table(
      WeedPressure weed, List<TankActive> tank, List<double[]> alone, Interaction... known) {
    return FoliarTable.of(
        weed, tank, new MixInteractions(tank, List.of(known)), alone, Optional.empty());
  }

  @Test
  void survivalsOfDifferentSitesMultiply() {
    FoliarTable t =
        table(
            PALMER,
            tank("2,4-D choline", "glyphosate", "glufosinate-ammonium"),
            List.of(alike(0.6), alike(0.5), alike(0.75)));
    assertThat(t.survival(0, 10)).isCloseTo(0.4 * 0.5 * 0.25, within(1e-15));
    assertThat(t.joint(PALMER, 10)).isCloseTo(0.95, within(1e-15));
    assertThat(t.isIdle()).isFalse();
  }

  /** Against a partner that counts by its place in the tank and not by its site. */
  @ParameterizedTest
  @CsvSource({"0.6, 0.5", "0.5, 0.6"})
  void ofOneSiteTheLargerEffectCountsOnceWhereverItStands(double one, double other) {
    FoliarTable beside =
        table(PALMER, tank("metribuzin", "atrazine"), List.of(alike(one), alike(other)));
    assertThat(beside.survival(0, 10)).isCloseTo(0.4, within(1e-15));
    FoliarTable apart =
        table(
            PALMER,
            tank("metribuzin", "glyphosate", "atrazine"),
            List.of(alike(one), alike(0.2), alike(other)));
    assertThat(apart.survival(0, 10)).isCloseTo(0.4 * 0.8, within(1e-15));
  }

  @Test
  void plantsThatResistASiteAreLeftToTheOthers() {
    FoliarTable t =
        table(RESISTANT, tank("2,4-D choline", "glyphosate"), List.of(alike(0.7), alike(0.9)));
    double lives = 0;
    for (int b = 0; b < RESISTANT.biotypes().size(); b++) {
      double share = RESISTANT.biotypes().get(b).share();
      double expected = share > 0.5 ? 0.3 : 0.3 * 0.1;
      assertThat(t.survival(b, 5)).isCloseTo(expected, within(1e-12));
      lives += share * expected;
    }
    assertThat(t.joint(RESISTANT, 5)).isCloseTo(1 - lives, within(1e-12));
    assertThat(lives).isCloseTo(0.9 * 0.3 + 0.1 * 0.03, within(1e-12));
  }

  @Test
  void aSiteThatIsGoneDoesNothingAndSetsNothingBack() {
    List<TankActive> tank = tank("2,4-D choline", "glufosinate-ammonium");
    List<double[]> alone = List.of(alike(0.7), alike(0.9));
    MixInteractions none = new MixInteractions(tank, List.of());
    FoliarTable t = FoliarTable.of(PALMER, tank, none, alone, Optional.of(Site.of(10)));
    assertThat(t.survival(0, 5)).isCloseTo(0.3, within(1e-15));
    assertThat(t.alone(1, 5)).isZero();
    assertThat(t.setback(0)).isEqualTo(Setback.SYSTEMIC);
    assertThat(FoliarTable.of(PALMER, tank, none, alone, Optional.of(Site.of(9))).survival(0, 5))
        .isCloseTo(0.3 * 0.1, within(1e-15));
  }

  /** From half of the smallest plants on a partner works; a contact one sets back harder. */
  @ParameterizedTest
  @CsvSource({
    "0.49, 0.49, NONE",
    "0.5, 0.49, SYSTEMIC",
    "0.49, 0.5, CONTACT",
    "0.9, 0.5, CONTACT",
    "0.5, 0.9, CONTACT"
  })
  void survivorsAreSetBackByThePartnerThatWorksHardest(
      double systemic, double contact, Setback expected) {
    FoliarTable t =
        table(
            PALMER,
            tank("2,4-D choline", "glufosinate-ammonium"),
            List.of(alike(systemic), alike(contact)));
    FoliarTable turned =
        table(
            PALMER,
            tank("glufosinate-ammonium", "2,4-D choline"),
            List.of(alike(contact), alike(systemic)));
    assertThat(t.setback(0)).isEqualTo(expected);
    assertThat(t.setbackRank(0)).isEqualTo(expected.rank());
    assertThat(turned.setback(0)).isEqualTo(expected);
  }

  /** The smallest plants tell whether it works, also where it is too late for the tall ones. */
  @Test
  void tallPlantsAreSetBackByWhatWorksOnSmallOnes() {
    double[] onlySmall = alike(0.1);
    onlySmall[0] = 0.9;
    FoliarTable t = table(PALMER, tank("glufosinate-ammonium"), List.of(onlySmall));
    assertThat(t.survival(0, 40)).isCloseTo(0.9, within(1e-15));
    assertThat(t.setback(0)).isEqualTo(Setback.CONTACT);
    double[] onlyTall = alike(0.9);
    onlyTall[0] = 0.1;
    assertThat(table(PALMER, tank("glufosinate-ammonium"), List.of(onlyTall)).setback(0))
        .isEqualTo(Setback.NONE);
  }

  /** Against a table in which a plant gains by being taller. */
  @Test
  void noPlantIsKilledMoreSurelyThanAShorterOne() {
    double[] rising = alike(0.2);
    rising[30] = 0.95;
    FoliarTable t = table(PALMER, tank("glyphosate"), List.of(rising));
    assertThat(t.survival(0, 30)).isEqualTo(0.8);
    double[] falling = alike(0.9);
    Arrays.fill(falling, 30, falling.length, 0.4);
    FoliarTable tall = table(PALMER, tank("glyphosate"), List.of(falling));
    assertThat(tall.survival(0, 29)).isCloseTo(0.1, within(1e-15));
    assertThat(tall.survival(0, 30)).isCloseTo(0.6, within(1e-15));
  }

  /** Antagonism takes from the partner that it weakens, before the product. */
  @Test
  void whatAPartnerTakesIsTakenBeforeTheProduct() {
    WeedPressure foxtail = Fixtures.weed("T", "SETFA", 50, DriverKind.NO, 0);
    FoliarTable t =
        table(
            foxtail,
            tank("clethodim", "2,4-D choline", "glyphosate"),
            List.of(alike(0.8), alike(0.1), alike(0.5)),
            half("clethodim", Interaction.Kind.ANTAGONISM));
    assertThat(t.alone(0, 3)).isCloseTo(0.4, within(1e-15));
    assertThat(t.alone(1, 3)).isCloseTo(0.1, within(1e-15));
    assertThat(t.survival(0, 3)).isCloseTo(0.6 * 0.9 * 0.5, within(1e-15));
  }

  /** A synergy takes from what lives of all together, and only where both are at work. */
  @Test
  void aSynergyTakesFromTheJointSurvival() {
    WeedPressure foxtail = Fixtures.weed("T", "SETFA", 50, DriverKind.NO, 0);
    Interaction synergy = half("clethodim", Interaction.Kind.SYNERGY);
    List<TankActive> tank = tank("clethodim", "2,4-D choline");
    assertThat(table(foxtail, tank, List.of(alike(0.8), alike(0.5)), synergy).survival(0, 3))
        .isCloseTo(0.2 * 0.5 * 0.5, within(1e-15));
    assertThat(table(foxtail, tank, List.of(alike(0.8), NOTHING), synergy).survival(0, 3))
        .isCloseTo(0.2, within(1e-15));
  }

  private static Interaction half(String active, Interaction.Kind kind) {
    Interaction.Side one =
        new Interaction.Side(
            Optional.of(Fixtures.active(active).id()), Optional.empty(), Optional.empty());
    Interaction.Side other =
        new Interaction.Side(Optional.empty(), Optional.of(Site.of(4)), Optional.empty());
    return new Interaction(
        one,
        other,
        Set.of(),
        Optional.of(WeedKind.GRASS),
        kind,
        one,
        Optional.of(new Interaction.Shares(0.5, 0.5)),
        Optional.empty(),
        "",
        Source.NOT_GIVEN);
  }

  @Test
  void aTankThatDoesNothingToAnyBiotypeIsIdle() {
    assertThat(table(PALMER, tank("clethodim", "glyphosate"), List.of(NOTHING, NOTHING)).isIdle())
        .isTrue();
    // Nine in ten resist it, and it is not idle for the tenth.
    assertThat(table(RESISTANT, tank("glyphosate"), List.of(alike(0.9))).isIdle()).isFalse();
  }
}
