package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.soybean;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Biotypes;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;
import org.swathbook.testing.MixCase;

/** Two sites, each resisted, by the same plants or by different ones. */
class ResistantBiotypeTest {
  private static final List<Resistance> BOTH = List.of(resistance(9), resistance(4));

  private static Resistance resistance(int site) {
    return new Resistance(Optional.of(Site.of(site)), Optional.empty(), 0.2, "confirmed");
  }

  private static String said(boolean together) {
    return said(
        new WeedPressure(
            new FieldId("C-1"),
            MixCase.CATALOG.weed(WeedId.of("KCHSC")),
            15,
            DriverKind.YES,
            Biotypes.withSusceptibleRest(
                together
                    ? Biotypes.together(0.2, BOTH)
                    : List.of(
                        Biotypes.together(0.2, BOTH.subList(0, 1)).get(0),
                        Biotypes.together(0.2, BOTH.subList(1, 2)).get(0))),
            BOTH,
            ""));
  }

  private static String said(WeedPressure kochia) {
    CaseBook book = soybean(kochia);
    SeasonCase s = SeasonCase.of(book);
    return s
        .pass(
            "2027-06-08",
            book.mix("glyphosate", "1.13 lb ae/acre", "fluroxypyr", "0.14 lb ae/acre"),
            s.standing(
                "KCHSC",
                10,
                3,
                s.site("glyphosate", "KCHSC", 94),
                s.site("fluroxypyr", "KCHSC", 88)))
        .judge()
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("resistant-biotype"))
        .map(Finding::message)
        .findFirst()
        .orElse("");
  }

  /** 0.2 of 10 plants on each of an acre's 4046.86 m², by hand 8,094. */
  @Test
  void plantsThatResistBothAreCounted() {
    assertThat(said(true)).contains("20 % of its plants resist that: 8,090 standing on an acre.");
  }

  @Test
  void plantsThatResistOneEachAreNotSaidToBeNone() {
    assertThat(said(false))
        .contains("a part of its plants resists each of them; none is listed with all.")
        .doesNotContain("0 %");
  }

  /** What the watch list alone suspects is told as suspected; beside what is listed, and alone. */
  @Test
  void whatIsWatchedIsSuspected() {
    WeedPressure none =
        new WeedPressure(
            new FieldId("C-1"),
            MixCase.CATALOG.weed(WeedId.of("KCHSC")),
            15,
            DriverKind.YES,
            Biotypes.withSusceptibleRest(List.of()),
            List.of(),
            "");
    WeedPressure nine =
        new WeedPressure(
            new FieldId("C-1"),
            MixCase.CATALOG.weed(WeedId.of("KCHSC")),
            15,
            DriverKind.YES,
            Biotypes.withSusceptibleRest(Biotypes.together(0.2, BOTH.subList(0, 1))),
            BOTH.subList(0, 1),
            "");
    Resistance four = Resistance.watched(Site.of(4), Optional.empty());
    Resistance alsoNine = Resistance.watched(Site.of(9), Optional.empty());
    assertThat(said(nine.watching(four)))
        .contains(
            "a part of its plants resists site 9, and resistance to site 4 is suspected (watch"
                + " list), in how many plants is not known.");
    assertThat(said(none.watching(alsoNine).watching(four)))
        .contains("resistance to site 9 and site 4 is suspected (watch list)")
        .doesNotContain("a part of its plants");
    assertThat(said(none.watching(four))).isEmpty();
  }
}
