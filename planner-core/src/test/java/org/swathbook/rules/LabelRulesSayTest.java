package org.swathbook.rules;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;
import static org.swathbook.rules.OneActive.active;
import static org.swathbook.rules.OneActive.post;
import static org.swathbook.rules.OneActive.pre;
import static org.swathbook.rules.OneActive.soybean;
import static org.swathbook.rules.SaidCase.says;
import static org.swathbook.rules.StarterTanks.STARTER;
import static org.swathbook.rules.StarterTanks.before;
import static org.swathbook.rules.StarterTanks.corn;
import static org.swathbook.rules.StarterTanks.soy;
import static org.swathbook.rules.StarterTanks.without;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.DriverKind;
import org.swathbook.book.SprayRecord;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Registration.LabelYears;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.Basis;
import org.swathbook.program.Applicator;
import org.swathbook.rules.SaidCase.Found;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;
import org.swathbook.testing.UseBuilder;

/**
 * All that the rules on rates, sums, soils, traits, people and papers say and ask, to the number,
 * at their limits and on either side. Tanks have the starter catalog, books of one active an
 * invented one.
 */
class LabelRulesSayTest {
  static Stream<SaidCase> cases() {
    return Stream.of(
            rates(), sums(), listed(), traits(), soils(), steel(), water(), people(), papers())
        .flatMap(List::stream);
  }

  private static MixCase metribuzin(SoilTexture texture, double om, double ph, double pounds) {
    return before(1, "soybean", "metribuzin " + pounds + " ai").field(f -> f.soil(texture, om, ph));
  }

  private static MixCase choline(int... days) {
    MixCase job = soy("2,4-D choline 0.71 ae");
    for (int day : days) {
      job.applied(day, "2,4-D choline 0.71 ae");
    }
    return job;
  }

  private static Found once(String lb, UseBuilder use) {
    return () ->
        CaseBook.of(soybean())
            .active(active("testactive", use))
            .uses(LocalDate.parse("2027-05-11"), "testactive", lb + " lb ai/acre");
  }

  /** Glufosinate of an invented label over so many Palmer amaranth a square metre. */
  private static Found over(String date, String lb, double perM2, UseBuilder use) {
    return () ->
        CaseBook.of(soybean())
            .active(
                IngredientBuilder.of("glufosinate-ammonium", 10, Movement.CONTACT, Basis.AI)
                    .foliar(4)
                    .use(use))
            .weed(Fixtures.weed("C-1", "AMAPA", perM2, DriverKind.YES, 0))
            .rain("2027-04-25", 1)
            .rain("2027-05-15", 1)
            .rain("2027-05-25", 1)
            .uses(LocalDate.parse(date), "glufosinate-ammonium", lb + " lb ai/acre");
  }

  /** One pass at planting and one a month later. */
  private static Found twice(String first, String second, UseBuilder... uses) {
    return () -> {
      CaseBook book = CaseBook.of(soybean()).active(active("testactive", uses));
      return book.sequence(
          book.pass(0, "2027-05-11", "testactive", first + " lb ai/acre"),
          book.pass(1, "2027-06-11", "testactive", second + " lb ai/acre"));
    };
  }

  private static Found twoBefore(UseBuilder... uses) {
    return () -> {
      CaseBook book = CaseBook.of(soybean()).active(active("testactive", uses));
      return book.sequence(
          book.pass(0, "2027-04-11", "testactive", "0.5 lb ai/acre"),
          book.pass(1, "2027-05-11", "testactive", "0.5 lb ai/acre"));
    };
  }

  private static Found on(String date, IngredientBuilder active) {
    return () -> CaseBook.of(soybean()).active(active).uses(date, "testactive", "0.6 lb ai/acre");
  }

  private static MixCase paraquat(Applicator who) {
    return before(5, "corn", "paraquat 0.5 cation").by(who);
  }

  private static MixCase fall(int lastYear) {
    return MixCase.in("soybean")
        .catalog(
            Restated.value(
                STARTER, "glyphosate", "use.registration.years", new LabelYears(2025, lastYear)))
        .day(-230, "", 0)
        .tank("glyphosate 1.0 ae");
  }

  private static final Applicator CERTIFIED = new Applicator("R. Invented", "NE-0001");

  private static List<SaidCase> rates() {
    return List.of(
        says(
            "rate-above-use",
            "2,4-D choline 0.96 lb",
            soy("2,4-D choline 0.96 ae"),
            "block: 2,4-D choline: 0.96 lb ae/acre in one spraying is above the 0.95 lb"
                + " ae/acre allowed in soybean. [0.96 lb ae/acre; 0.95 lb ae/acre] at most 2"
                + " pt/acre of 2-4-d-choline-3.8sl"),
        says(
            "rate-above-use",
            "0.5 and 0.46 lb of two products",
            soy("2,4-D choline 0.5 ae + 2,4-D choline 0.46 ae"),
            "block: 2,4-D choline: 0.96 lb ae/acre in one spraying is above the 0.95 lb"
                + " ae/acre allowed in soybean. [0.96 lb ae/acre; 0.95 lb ae/acre] at most 1"
                + " pt/acre of 2-4-d-choline-3.8sl",
            "block: 2,4-D choline: 0.96 lb ae/acre in one spraying is above the 0.95 lb"
                + " ae/acre allowed in soybean. [0.96 lb ae/acre; 0.95 lb ae/acre] at most 0.9"
                + " pt/acre of 2-4-d-choline-3.8sl"),
        says(
            "rate-above-use",
            "0.95 and 0.1 lb, where the first brings the whole rate",
            soy("2,4-D choline 0.95 ae + 2,4-D choline 0.1 ae"),
            "block: 2,4-D choline: 1.05 lb ae/acre in one spraying is above the 0.95 lb"
                + " ae/acre allowed in soybean. [1.05 lb ae/acre; 0.95 lb ae/acre] at most 1.7"
                + " pt/acre of 2-4-d-choline-3.8sl",
            "block: 2,4-D choline: 1.05 lb ae/acre in one spraying is above the 0.95 lb"
                + " ae/acre allowed in soybean. [1.05 lb ae/acre; 0.95 lb ae/acre] leave it out:"
                + " the other products bring the whole rate"),
        says(
            "rate-above-use",
            "three times the most, no slipped decimal",
            once("3.0", pre()),
            "block: Testactive: 3 lb ai/acre in one spraying is above the 1 lb ai/acre"
                + " allowed in soybean. [3 lb ai/acre; 1 lb ai/acre] at most 32 fl oz/acre of"
                + " testactive 4 lb/gal"),
        says(
            "rate-above-use",
            "a little more than that",
            once("3.01", pre()),
            "block: Testactive: 3.01 lb ai/acre in one spraying is above the 1 lb ai/acre"
                + " allowed in soybean; check the decimal point. [3.01 lb ai/acre; 1 lb ai/acre]"
                + " at most 32 fl oz/acre of testactive 4 lb/gal"),
        says(
            "rate-above-use",
            "ten times the most",
            once("10", pre()),
            "block: Testactive: 10 lb ai/acre in one spraying is above the 1 lb ai/acre"
                + " allowed in soybean; a tenth of it, 1 lb ai/acre, would be a rate of that"
                + " use: check the decimal point. [10 lb ai/acre; 1 lb ai/acre] at most 32 fl"
                + " oz/acre of testactive 4 lb/gal"),
        says(
            "rate-above-use",
            "ten times the least",
            once("5", pre()),
            "block: Testactive: 5 lb ai/acre in one spraying is above the 1 lb ai/acre"
                + " allowed in soybean; a tenth of it, 0.5 lb ai/acre, would be a rate of that"
                + " use: check the decimal point. [5 lb ai/acre; 1 lb ai/acre] at most 32 fl"
                + " oz/acre of testactive 4 lb/gal"),
        says(
            "rate-above-use",
            "a little less than ten times the least",
            once("4.99", pre()),
            "block: Testactive: 4.99 lb ai/acre in one spraying is above the 1 lb ai/acre"
                + " allowed in soybean; check the decimal point. [4.99 lb ai/acre; 1 lb ai/acre]"
                + " at most 32 fl oz/acre of testactive 4 lb/gal"),
        says(
            "rate-above-use",
            "rate not known",
            soy(without("clethodim", "use.rates"), "clethodim 0.125 ai"),
            "ask: rate of clethodim in soybean [label, directions for the crop; then"
                + " uses.soybean.post.rate in catalog/ingredients/clethodim.yaml]"),
        says(
            "rate-above-use",
            "0.76 lb of metribuzin on silt loam, more than any soil may have",
            metribuzin(SoilTexture.SILT_LOAM, 2.5, 6.6, 0.76),
            "block: Metribuzin: 0.76 lb ai/acre in one spraying is above the 0.5 lb"
                + " ai/acre allowed in soybean. [0.76 lb ai/acre; 0.5 lb ai/acre] at most 10.5"
                + " oz weight/acre of metribuzin-75wg"),
        says(
            "rate-below-use",
            "2,4-D choline 0.70 lb",
            soy("2,4-D choline 0.70 ae"),
            "warn: 2,4-D choline: 0.7 lb ae/acre is below the 0.71 lb ae/acre at which the"
                + " use in soybean begins on this soil. [0.7 lb ae/acre; 0.71 lb ae/acre] at"
                + " least 1.5 pt/acre of 2-4-d-choline-3.8sl, or leave it out"),
        says(
            "rate-below-use",
            "0.4 and 0.31 lb of two products, the least together",
            soy("2,4-D choline 0.4 ae + 2,4-D choline 0.31 ae")),
        says(
            "rate-below-use",
            "0.6 lb over Palmer amaranth, for which the label asks 0.66",
            over("2027-06-08", "0.6", 5, post().weedRate("AMAPA", 0, "0.66 lb ai/acre")),
            "warn: Glufosinate-ammonium: 0.6 lb ai/acre is below the 0.66 lb ai/acre at"
                + " which the use in soybean begins on Palmer amaranth of 27.4 in. [0.6 lb"
                + " ai/acre; 0.66 lb ai/acre] at least 22 fl oz/acre of glufosinate-ammonium 4"
                + " lb/gal, or leave it out"),
        says(
            "rate-below-use",
            "the same over one plant on 20 m², for which nobody sprays",
            over("2027-06-08", "0.6", 0.05, post().weedRate("AMAPA", 0, "0.66 lb ai/acre"))),
        says(
            "rate-below-use",
            "the same where the label asks it for another weed",
            over("2027-06-08", "0.6", 80, post().weedRate("SETFA", 0, "0.66 lb ai/acre"))),
        says(
            "rate-below-use",
            "over tall plants, for which it asks more than for small ones",
            over(
                "2027-06-08",
                "0.6",
                80,
                post()
                    .weedRate("AMAPA", 1, "0.55 lb ai/acre")
                    .weedRate("AMAPA", 0, "0.7 lb ai/acre")),
            "warn: Glufosinate-ammonium: 0.6 lb ai/acre is below the 0.7 lb ai/acre at"
                + " which the use in soybean begins on Palmer amaranth of 27.4 in. [0.6 lb"
                + " ai/acre; 0.7 lb ai/acre] at least 23 fl oz/acre of glufosinate-ammonium 4"
                + " lb/gal, or leave it out"),
        says(
            "rate-below-use",
            "before the crop, over plants that stand at planting",
            over("2027-05-11", "0.6", 80, pre().weedRate("AMAPA", 0, "0.66 lb ai/acre")),
            "warn: Glufosinate-ammonium: 0.6 lb ai/acre is below the 0.66 lb ai/acre at"
                + " which the use in soybean begins on Palmer amaranth of 5.6 in. [0.6 lb"
                + " ai/acre; 0.66 lb ai/acre] at least 22 fl oz/acre of glufosinate-ammonium 4"
                + " lb/gal, or leave it out"),
        says(
            "rate-below-use",
            "0.66 lb, just what the label asks",
            over("2027-06-08", "0.66", 80, post().weedRate("AMAPA", 0, "0.66 lb ai/acre"))),
        says(
            "rate-below-use",
            "0.4 lb, less than any weed is sprayed with",
            over("2027-06-08", "0.4", 80, post().weedRate("SETFA", 0, "0.66 lb ai/acre")),
            "warn: Glufosinate-ammonium: 0.4 lb ai/acre is below the 0.5 lb ai/acre at"
                + " which the use in soybean begins on this soil. [0.4 lb ai/acre; 0.5 lb"
                + " ai/acre] at least 16 fl oz/acre of glufosinate-ammonium 4 lb/gal, or leave it"
                + " out"));
  }

  private static List<SaidCase> sums() {
    return List.of(
        says(
            "annual-cap",
            "atrazine 1.24 + 1.0 lb of 2.5",
            corn("atrazine 1.0 ai").applied(0, "atrazine 1.24 ai")),
        says(
            "annual-cap",
            "1.25 + 1.0, nine tenths",
            corn("atrazine 1.0 ai").applied(0, "atrazine 1.25 ai"),
            "warn: Atrazine: 2.25 lb ai/acre this calendar year leaves 0.25 lb ai/acre of"
                + " the 2.5 lb ai/acre allowed in corn. [2.25 lb ai/acre; 2.5 lb ai/acre] count"
                + " it once more against the label; less of atrazine-4sc now leaves some"
                + " atrazine for later"),
        says(
            "annual-cap",
            "1.47 + 1.0, nearly all of it",
            corn("atrazine 1.0 ai").applied(0, "atrazine 1.47 ai"),
            "warn: Atrazine: 2.47 lb ai/acre this calendar year leaves 0.03 lb ai/acre of"
                + " the 2.5 lb ai/acre allowed in corn. [2.47 lb ai/acre; 2.5 lb ai/acre] count"
                + " it once more against the label; less of atrazine-4sc now leaves some"
                + " atrazine for later"),
        says(
            "annual-cap",
            "1.5 + 1.0, all of it",
            corn("atrazine 1.0 ai").applied(0, "atrazine 1.5 ai"),
            "warn: Atrazine: 2.5 lb ai/acre this calendar year is all that is allowed in"
                + " corn. [2.5 lb ai/acre; 2.5 lb ai/acre] count it once more against the label;"
                + " less of atrazine-4sc now leaves some atrazine for later"),
        says(
            "annual-cap",
            "1.51 + 1.0",
            corn("atrazine 1.0 ai").applied(0, "atrazine 1.51 ai"),
            "block: Atrazine: 2.51 lb ai/acre this calendar year is above the 2.5 lb"
                + " ai/acre allowed in corn. [2.51 lb ai/acre; 2.5 lb ai/acre] at most 1.9"
                + " pt/acre of atrazine-4sc"),
        says(
            "annual-cap",
            "2.5 + 1.0, nothing left",
            corn("atrazine 1.0 ai").applied(0, "atrazine 2.5 ai"),
            "block: Atrazine: 2.5 lb ai/acre this calendar year is above the 2 lb ai/acre"
                + " allowed in corn (burndown, preplant, pre). [2.5 lb ai/acre; 2 lb ai/acre] at"
                + " most 1 pt/acre of atrazine-4sc",
            "block: Atrazine: 3.5 lb ai/acre this calendar year is above the 2.5 lb"
                + " ai/acre allowed in corn. [3.5 lb ai/acre; 2.5 lb ai/acre] another active:"
                + " nothing is left of this one"),
        says(
            "annual-cap",
            "2.499 + 1.0, less than a practical step left",
            corn("atrazine 1.0 ai").applied(0, "atrazine 2.499 ai"),
            "block: Atrazine: 2.499 lb ai/acre this calendar year is above the 2 lb"
                + " ai/acre allowed in corn (burndown, preplant, pre). [2.499 lb ai/acre; 2 lb"
                + " ai/acre] at most 1 pt/acre of atrazine-4sc",
            "block: Atrazine: 3.499 lb ai/acre this calendar year is above the 2.5 lb"
                + " ai/acre allowed in corn. [3.499 lb ai/acre; 2.5 lb ai/acre] another active:"
                + " less than one practical step is left"),
        says(
            "annual-cap",
            "fomesafen 0.07 + 0.19 in two years",
            soy("fomesafen 0.19 ai")
                .applied(24 - 365, "fomesafen 0.07 ai", "soybean", 2026, SprayRecord.EMPTY),
            "block: Fomesafen: 0.26 lb ai/acre in this calendar year and the last is above"
                + " the 0.25 lb ai/acre allowed in soybean. [0.26 lb ai/acre; 0.25 lb ai/acre]"
                + " at most 11 fl oz/acre of fomesafen-2sl"),
        says(
            "annual-cap",
            "most of a season not known",
            soy(without("clethodim", "use.caps"), "clethodim 0.125 ai"),
            "ask: most of clethodim in a season of soybean [label, maximum use rates; then"
                + " uses.soybean.post.cap in catalog/ingredients/clethodim.yaml]"),
        says(
            "annual-cap",
            "the smaller sum of one use where another allows more",
            twice("0.7", "0.8", pre().cap("1.0 lb ai/acre"), post().cap("1.5 lb ai/acre")),
            "note: Testactive: 1.5 lb ai/acre this season is all that is allowed in"
                + " soybean. [1.5 lb ai/acre; 1.5 lb ai/acre]"),
        says(
            "annual-cap",
            "more than the larger of two",
            twice("0.71", "0.8", pre().cap("1.0 lb ai/acre"), post().cap("1.5 lb ai/acre")),
            "block: Testactive: 1.51 lb ai/acre this season is above the 1.5 lb ai/acre"
                + " allowed in soybean. [1.51 lb ai/acre; 1.5 lb ai/acre] at most 25 fl oz/acre"
                + " of testactive 4 lb/gal"),
        says(
            "annual-cap",
            "two in one season that both brings more than the one use here allows",
            twice("0.9", "0.9", pre().cap("2.0 lb ai/acre"), post().cap("0.8 lb ai/acre")),
            "block: Testactive: 0.9 lb ai/acre this season is above the 0.8 lb ai/acre"
                + " allowed in soybean. [0.9 lb ai/acre; 0.8 lb ai/acre] at most 25 fl oz/acre"
                + " of testactive 4 lb/gal",
            "note: Testactive: 1.8 lb ai/acre this season leaves 0.2 lb ai/acre of the 2"
                + " lb ai/acre allowed in soybean. [1.8 lb ai/acre; 2 lb ai/acre]"),
        says(
            "annual-cap",
            "two before emergence, of which the label allows less than of the season",
            twoBefore(pre().cap("2.0 lb ai/acre").cap("0.9 lb ai/acre", PREPLANT, PRE)),
            "block: Testactive: 1 lb ai/acre this season is above the 0.9 lb ai/acre"
                + " allowed in soybean (preplant, pre). [1 lb ai/acre; 0.9 lb ai/acre] at most 12"
                + " fl oz/acre of testactive 4 lb/gal"),
        says(
            "annual-cap",
            "one of them after emergence, which does not count there",
            twice(
                "0.8",
                "0.8",
                pre().cap("2.0 lb ai/acre").cap("0.9 lb ai/acre", PREPLANT, PRE),
                post().cap("2.0 lb ai/acre"))),
        says(
            "annual-cap",
            "two uses that allow so much before emergence: the larger counts",
            twoBefore(
                pre().cap("2.0 lb ai/acre").cap("0.9 lb ai/acre", PREPLANT, PRE),
                pre().cap("2.0 lb ai/acre").cap("1.2 lb ai/acre", PREPLANT, PRE))),
        says(
            "annual-cap",
            "the same named in the other order",
            twoBefore(
                pre().cap("2.0 lb ai/acre").cap("1.2 lb ai/acre", PREPLANT, PRE),
                pre().cap("2.0 lb ai/acre").cap("0.9 lb ai/acre", PREPLANT, PRE))),
        says("application-count", "the third 2,4-D choline", choline(-20, 0)),
        says(
            "application-count",
            "the fourth",
            choline(-35, -20, 0),
            "block: 2,4-D choline: 4 applications (3 Apr 2027, 18 Apr 2027, 8 May 2027, 1"
                + " Jun 2027) where soybean may have 3 in a season. [4; 3] another active of a"
                + " different site, or one pass fewer with this one"),
        says(
            "application-count",
            "how many are allowed not known, at the second",
            soy(without("2,4-D choline", "use.applications"), "2,4-D choline 0.71 ae")
                .applied(0, "2,4-D choline 0.71 ae"),
            "ask: most applications of 2,4-D choline in a season of soybean [label,"
                + " maximum number of applications; then uses.soybean.post.applications in"
                + " catalog/ingredients/2-4-d-choline.yaml]"),
        says(
            "application-count",
            "how many are allowed not known, at the first",
            soy(without("2,4-D choline", "use.applications"), "2,4-D choline 0.71 ae")),
        says(
            "application-count",
            "two where every use allows one",
            twice("0.5", "0.5", pre().applications(1), post().applications(1)),
            "block: Testactive: 2 applications (11 May 2027, 11 Jun 2027) where soybean"
                + " may have 1 in a season. [2; 1] another active of a different site, or one"
                + " pass fewer with this one"),
        says(
            "application-count",
            "two where the use before emergence allows two",
            twice("0.5", "0.5", pre().applications(2), post().applications(1))),
        says(
            "application-count",
            "two where the other use does not say",
            twice("0.5", "0.5", pre(), post().applications(1))),
        says(
            "annual-cap",
            "acres of an earlier spraying not known",
            corn("atrazine 1.0 ai").applied(0, "atrazine 0.5 ai").acresUnknown(),
            "ask: acres that atrazine went on this season: a row counts as the whole field"
                + " without them [spray record; then column acres of applications.csv]"),
        says(
            "application-count",
            "two before emergence, where one is allowed there",
            twoBefore(pre().applications(1), post().applications(3)),
            "block: Testactive: 2 applications (11 Apr 2027, 11 May 2027) where soybean"
                + " may have 1 in this part of the season. [2; 1] another active of a different"
                + " site, or one pass fewer with this one"),
        says(
            "application-count",
            "two before emergence, where two are allowed there",
            twoBefore(pre().applications(2), post().applications(3))),
        says(
            "application-count",
            "one before emergence and one after, where each allows one and the season two",
            twice("0.5", "0.5", pre().applications(2), post().applications(1))));
  }

  private static List<SaidCase> listed() {
    return List.of(
        says(
            "crop-not-listed",
            "atrazine over soybean",
            soy("atrazine 1.0 ai"),
            "block: Atrazine: the label refuses soybean after emergence (kills soybean,"
                + " from the soil as well). [soybean after emergence; refused] an active that is"
                + " listed for soybean after emergence"),
        says(
            "crop-not-listed",
            "metribuzin over soybean, listed before it",
            soy("metribuzin 0.3 ai"),
            "block: Metribuzin: the label refuses soybean after emergence (kills soybean"
                + " that is up). [soybean after emergence; refused] an active that is listed for"
                + " soybean after emergence"),
        says(
            "crop-not-listed",
            "clethodim over corn",
            corn("clethodim 0.125 ai"),
            "block: Clethodim: no use is listed in corn after emergence; listed there:"
                + " stubble, fall. [after emergence; stubble, fall] the pass at a listed time,"
                + " or another active"),
        says(
            "crop-not-listed",
            "acetochlor as an emulsion in soybean",
            MixCase.in("soybean").day(0, "", 0).product("acetochlor-6.4ec", "1.5 pt/acre"),
            "block: Acetochlor: the label refuses soybean before emergence (the"
                + " concentrate injures soybean). [soybean before emergence; refused] an active"
                + " that is listed for soybean before emergence"),
        says(
            "crop-not-listed",
            "a use for directed and hooded sprays alone",
            on(
                "2027-06-11",
                active("testactive", post().by(Method.DIRECTED), post().by(Method.HOODED))),
            "block: Testactive: in soybean after emergence it is listed for directed and"
                + " hooded sprays only, and this pass is broadcast. [broadcast; directed and"
                + " hooded] a directed and hooded spray, or another active"),
        says(
            "crop-not-listed",
            "a use for another formulation alone",
            on(
                "2027-06-11",
                active("testactive", post().formulations("EC", "CS"), post().by(Method.HOODED))),
            "block: Testactive: in soybean after emergence only the formulations CS and EC"
                + " are listed, and this product is SC. [SC; CS and EC] a product of formulation"
                + " CS or EC"),
        says(
            "crop-not-listed",
            "a use before and at planting, sprayed over the crop",
            on(
                "2027-06-11",
                active(
                    "testactive",
                    pre(),
                    UseBuilder.of("corn", POST),
                    UseBuilder.of("soybean", BURNDOWN).refused())),
            "block: Testactive: no use is listed in soybean after emergence; listed there:"
                + " burndown, preplant, pre. [after emergence; burndown, preplant, pre] the pass"
                + " at a listed time, or another active"),
        says(
            "crop-not-listed",
            "a use that the label refuses",
            on("2027-06-11", active("testactive", pre(), UseBuilder.of("soybean", POST).refused())),
            "block: Testactive: the label refuses soybean after emergence. [soybean after"
                + " emergence; refused] an active that is listed for soybean after emergence"),
        says(
            "crop-not-listed",
            "a use in corn alone",
            on(
                "2027-06-11",
                active("testactive", UseBuilder.of("corn", POST).rate("0.5-1.0 lb ai/acre"))),
            "block: Testactive: no use is listed in soybean, and the list of its crops may"
                + " not be whole. [soybean; listed crops alone] an active that is listed for"
                + " soybean after emergence"));
  }

  private static List<SaidCase> traits() {
    return List.of(
        says(
            "trait-needed",
            "glyphosate over another trait",
            MixCase.in("soybean", "glufosinate").day(24, "V2", 5).tank("glyphosate 1.0 ae"),
            "block: Glyphosate needs soybean with the glyphosate trait; this field has the"
                + " trait glufosinate. [glufosinate; glyphosate] an active that needs no trait"
                + " here, or seed that has it"),
        says(
            "trait-needed",
            "glyphosate over soybean without a trait",
            MixCase.in("soybean").day(24, "V2", 5).tank("glyphosate 1.0 ae"),
            "block: Glyphosate needs soybean with the glyphosate trait; this field has no"
                + " trait. [none; glyphosate] an active that needs no trait here, or seed that"
                + " has it"),
        says(
            "trait-needed",
            "2,4-D choline over two other traits",
            MixCase.in("soybean", "glufosinate", "glyphosate")
                .day(24, "V2", 5)
                .tank("2,4-D choline 0.95 ae"),
            "block: 2,4-D choline needs soybean with the 2,4-D trait; this field has the"
                + " traits glufosinate and glyphosate. [glufosinate and glyphosate; 2,4-D] an"
                + " active that needs no trait here, or seed that has it"),
        says(
            "trait-needed",
            "seed of which nothing is written down",
            MixCase.in("soybean")
                .field(FieldBuilder::traitsUnknown)
                .day(24, "V2", 5)
                .tank("glyphosate 1.0 ae"),
            "block: Glyphosate needs soybean with the glyphosate trait, and the field does"
                + " not say what was planted. [unknown; glyphosate] confirm the seed tag and"
                + " fill in the traits of the field"),
        says(
            "trait-needed",
            "the same before emergence, and a use that needs safened seed",
            MixCase.in("grain-sorghum")
                .field(FieldBuilder::traitsUnknown)
                .day(0, "", 0)
                .tank("S-metolachlor 1.2 ai"),
            "ask: whether the seed has safened seed, which S-metolachlor needs [seed tag;"
                + " then column traits of fields.csv]"),
        says(
            "trait-needed",
            "sorghum seed without a safener",
            MixCase.in("grain-sorghum").day(0, "", 0).tank("S-metolachlor 1.2 ai"),
            "block: S-metolachlor needs grain sorghum with safened seed; this field has no"
                + " trait. [none; safened seed] an active that needs no trait here, or seed that"
                + " has it"),
        says(
            "trait-needed",
            "safened sorghum seed",
            MixCase.in("grain-sorghum", "safened-seed").day(0, "", 0).tank("S-metolachlor 1.2 ai")),
        says(
            "trait-needed",
            "whether a trait is needed not known",
            soy(without("clethodim", "use.traits"), "clethodim 0.125 ai"),
            "ask: whether clethodim needs a trait of soybean [label, directions for the"
                + " crop; then uses.soybean.post.trait in catalog/ingredients/clethodim.yaml]"));
  }

  private static List<SaidCase> soils() {
    return List.of(
        says(
            "soil-limit",
            "metribuzin at pH 7.5",
            metribuzin(SoilTexture.SILT_LOAM, 2.5, 7.5, 0.3),
            "block: Metribuzin is allowed at soil pH below 7.5; this field has 7.5. [pH"
                + " 7.5; pH below 7.5] an active without a pH limit, or only the part of the"
                + " field within it"),
        says(
            "soil-limit",
            "on coarse soil of 1.9 %",
            metribuzin(SoilTexture.SANDY_LOAM, 1.9, 6.6, 0.3),
            "block: Metribuzin is refused in soybean on this soil (sandy loam, organic"
                + " matter 1.9 %, pH 6.6): the label does not allow it on sand or loamy sand or"
                + " sandy loam with organic matter below 2 %. [sandy loam, organic matter 1.9 %,"
                + " pH 6.6; not on sand or loamy sand or sandy loam with organic matter below 2"
                + " %] an active without that limit, or only the ground outside it"),
        says(
            "soil-limit",
            "on sand",
            metribuzin(SoilTexture.SAND, 3, 6.6, 0.2),
            "block: Metribuzin is refused in soybean on this soil (sand, organic matter"
                + " 3.0 %, pH 6.6): the label does not allow it on sand. [sand, organic matter"
                + " 3.0 %, pH 6.6; not on sand] an active without that limit, or only the ground"
                + " outside it"),
        says(
            "soil-limit",
            "0.51 lb on silt loam",
            metribuzin(SoilTexture.SILT_LOAM, 2.5, 6.6, 0.51),
            "block: Metribuzin: 0.51 lb ai/acre is above the 0.5 lb ai/acre allowed on"
                + " this soil (silt loam, organic matter 2.5 %, pH 6.6). [0.51 lb ai/acre; 0.5"
                + " lb ai/acre] at most 0.5 lb ai/acre on that ground"),
        says(
            "soil-limit",
            "metribuzin on soil of which nothing is known",
            before(1, "soybean", "metribuzin 0.3 ai").field(FieldBuilder::soilUnknown),
            "ask: soil pH of the field (metribuzin is allowed at pH below 7.5) [soil test;"
                + " then column soilPh of fields.csv]",
            "ask: soilTexture of the field, on which the rate of metribuzin depends (sand)"
                + " [column soilTexture of fields.csv]"),
        says(
            "soil-limit",
            "pH limit not known",
            MixCase.in("soybean")
                .catalog(without("metribuzin", "use.soilPh"))
                .day(-1, "", 0)
                .tank("metribuzin 0.3 ai"),
            "ask: soil pH limit of metribuzin in soybean [label, soil restrictions; then"
                + " uses.soybean.burndown.soilPh in catalog/ingredients/metribuzin.yaml]"),
        says(
            "soil-limit",
            "pH limit not known of an active without a layer",
            soy(without("clethodim", "use.soilPh"), "clethodim 0.125 ai")),
        says(
            "soil-limit",
            "atrazine 1.61 lb on erodible ground with 29 % residue",
            before(0, "corn", "atrazine 1.61 ai").field(f -> f.erodible(29)),
            "block: Atrazine: 1.61 lb ai/acre is above the 1.6 lb ai/acre allowed on this"
                + " soil (silt loam, organic matter 2.5 %, pH 6.6, highly erodible with 29 %"
                + " residue). [1.61 lb ai/acre; 1.6 lb ai/acre] at most 1.6 lb ai/acre on that"
                + " ground"),
        says(
            "soil-limit",
            "a label of pH 6 and above at 5.9",
            () ->
                CaseBook.of(soybean().soil(SoilTexture.LOAM, 2, 5.9))
                    .active(active("testactive", pre().soilPh(Limit.atLeast(6))))
                    .uses("2027-05-11", "testactive", "0.6 lb ai/acre"),
            "block: Testactive is allowed at soil pH from 6; this field has 5.9. [pH 5.9;"
                + " pH from 6] an active without a pH limit, or only the part of the field"
                + " within it"),
        says(
            "soil-limit",
            "atrazine on ground of which nobody says how steep it is",
            before(0, "corn", "atrazine 2.0 ai"),
            "ask: erodible and residuePct of the field, on which the rate of atrazine"
                + " depends (highly erodible ground with residue below 30 %) [column erodible"
                + " and residuePct of fields.csv]"),
        says(
            "soil-limit",
            "atrazine on erodible ground of which nobody measured the residue",
            before(0, "corn", "atrazine 2.0 ai").field(FieldBuilder::erodible),
            "ask: residuePct of the field, on which the rate of atrazine depends (highly"
                + " erodible ground with residue below 30 %) [column residuePct of fields.csv]"),
        says(
            "soil-limit",
            "metribuzin on sandy loam of which nobody measured the organic matter",
            before(1, "soybean", "metribuzin 0.3 ai").field(f -> f.texture(SoilTexture.SANDY_LOAM)),
            "ask: organicMatterPct of the field, on which the rate of metribuzin depends"
                + " (sand or loamy sand or sandy loam with organic matter below 2 %) [column"
                + " organicMatterPct of fields.csv]",
            "ask: soil pH of the field (metribuzin is allowed at pH below 7.5) [soil test;"
                + " then column soilPh of fields.csv]"));
  }

  private static List<SaidCase> steel() {
    return List.of(
        says(
            "incorporation-needed",
            "trifluralin on the day of tillage",
            before(0, "soybean", "trifluralin 0.75 ai").field(FieldBuilder::tilled),
            "note: Trifluralin is to be worked in within 24 h."),
        says(
            "incorporation-needed",
            "a day after it",
            before(-1, "soybean", "trifluralin 0.75 ai").field(FieldBuilder::tilled),
            "block: Trifluralin must be worked in within 24 h, and this pass comes after"
                + " the tillage at planting. [sprayed after the tillage; within 24 h] a pass"
                + " before 8 May 2027"),
        says(
            "incorporation-needed",
            "without tillage",
            before(0, "soybean", "trifluralin 0.75 ai"),
            "block: Trifluralin must be worked in within 24 h, and this field is not"
                + " tilled. [no tillage; within 24 h] tillage, or a soil active that rain"
                + " carries down"),
        says(
            "incorporation-needed",
            "without tillage, and the job works it in",
            before(0, "soybean", "trifluralin 0.75 ai").incorporated(true),
            "note: Trifluralin is to be worked in within 24 h."),
        says(
            "incorporation-needed",
            "with tillage, and the job leaves it on top",
            before(0, "soybean", "trifluralin 0.75 ai")
                .field(FieldBuilder::tilled)
                .incorporated(false),
            "block: Trifluralin must be worked in within 24 h, and this job leaves it on"
                + " top. [not worked in; within 24 h] tillage, or a soil active that rain"
                + " carries down"),
        says(
            "incorporation-needed",
            "pendimethalin in corn a day before the tillage",
            before(1, "corn", "pendimethalin 0.95 ai").field(FieldBuilder::tilled),
            "block: Pendimethalin may not be worked in, in corn, and the tillage at"
                + " planting on 8 May 2027 would. [sprayed before the tillage; left on top] a"
                + " pass after the tillage at planting"),
        says(
            "incorporation-needed",
            "pendimethalin in corn, worked in by the job",
            before(0, "corn", "pendimethalin 0.95 ai").incorporated(true),
            "block: Pendimethalin may not be worked in, in corn, and this job works it in."
                + " [worked in; left on top] leave it on top, for rain to carry it down"));
  }

  private static List<SaidCase> water() {
    return List.of(
        says(
            "setback-water",
            "atrazine 199.5 ft from water of no kind",
            corn("atrazine 1.0 ai").field(f -> f.waterFeet(199.5)),
            "block: The label of atrazine keeps 200 ft from lakes and reservoirs, 66 ft"
                + " from where runoff enters water and 50 ft from wells; water lies 199.5 ft"
                + " from this field. [199.5 ft; 200 ft] leave a strip of 1 ft toward the water,"
                + " or take another active"),
        says(
            "setback-water",
            "atrazine, distance to water not known",
            corn("atrazine 1.0 ai"),
            "ask: distance from the field to the nearest well, inlet, stream or lake"
                + " [column waterDistance of fields.csv]"),
        says(
            "setback-water",
            "setbacks not known",
            soy(without("clethodim", "terms.setbacks"), "clethodim 0.125 ai"),
            "ask: distances that the label of clethodim keeps from water [label,"
                + " environmental hazards; then setback in catalog/ingredients/clethodim.yaml]"),
        says(
            "setback-water",
            "atrazine beside a lake at 199 ft, a stream at 65 and a well at 49",
            corn("atrazine 1.0 ai")
                .field(f -> f.waters("lake 199 ft", "stream 65 ft", "well 49 ft")),
            "block: The label of atrazine keeps 200 ft from lakes and reservoirs; here it"
                + " is 199 ft. [199 ft; 200 ft] leave a strip of 1 ft toward it, or take another"
                + " active",
            "block: The label of atrazine keeps 50 ft from wells; here it is 49 ft. [49"
                + " ft; 50 ft] leave a strip of 1 ft toward it, or take another active",
            "block: The label of atrazine keeps 66 ft from where runoff enters water; here"
                + " it is 65 ft. [65 ft; 66 ft] leave a strip of 1 ft toward it, or take another"
                + " active"),
        says(
            "setback-water",
            "atrazine beside a lake at 200 ft, a stream at 66 and a well at 50",
            corn("atrazine 1.0 ai")
                .field(f -> f.waters("lake 200 ft", "stream 66 ft", "well 50 ft"))),
        says(
            "setback-water",
            "atrazine beside a stream, and other water not named",
            corn("atrazine 1.0 ai").field(f -> f.waters("stream 300 ft")),
            "ask: distance from the field to the nearest lake [column water of fields.csv]",
            "ask: distance from the field to the nearest well [column water of fields.csv]"));
  }

  private static List<SaidCase> people() {
    return List.of(
        says(
            "restricted-use",
            "atrazine by nobody who is named",
            corn("atrazine 1.0 ai"),
            "note: Atrazine is a restricted-use product: a certified applicator applies it"
                + " or supervises, and keeps a record with the certificate's number."),
        says(
            "restricted-use",
            "atrazine by one without a certificate",
            corn("atrazine 1.0 ai").by(new Applicator("R. Invented", "")),
            "warn: R. Invented is named as the applicator without the number of a"
                + " certificate, and atrazine is for certified applicators, or for who works"
                + " under one. [no certificate named; a certified applicator] the number of the"
                + " applicator's certificate, or that of who supervises",
            "note: Atrazine is a restricted-use product: a certified applicator applies it"
                + " or supervises, and keeps a record with the certificate's number."),
        says(
            "restricted-use",
            "atrazine and paraquat by one without a certificate",
            before(5, "corn", "atrazine 1.0 ai + paraquat 0.5 cation")
                .by(new Applicator("R. Invented", "")),
            "warn: R. Invented is named as the applicator without the number of a"
                + " certificate, and atrazine and paraquat are for certified applicators, or for"
                + " who works under one. [no certificate named; a certified applicator] the"
                + " number of the applicator's certificate, or that of who supervises",
            "note: Atrazine is a restricted-use product: a certified applicator applies it"
                + " or supervises, and keeps a record with the certificate's number.",
            "note: Paraquat is a restricted-use product, for certified applicators who"
                + " have had the training in paraquat that its label asks for, and wants a"
                + " record with the certificate's number.",
            "ask: whether R. Invented has had the training in paraquat that the label of"
                + " paraquat asks for [the job: applicator, training]"),
        says(
            "restricted-use",
            "whether it is restricted not known",
            soy(without("clethodim", "terms.restrictedUse"), "clethodim 0.125 ai"),
            "ask: whether clethodim is a restricted-use product [label, first page; then"
                + " restrictedUse in catalog/ingredients/clethodim.yaml]"),
        says(
            "restricted-use",
            "a training of a restricted product not known",
            MixCase.in("corn")
                .catalog(without("paraquat", "terms.training"))
                .day(-5, "", 0)
                .tank("paraquat 0.5 cation")
                .by(CERTIFIED),
            "note: Paraquat is a restricted-use product: a certified applicator applies it"
                + " or supervises, and keeps a record with the certificate's number.",
            "ask: whether the label of paraquat asks for a training of its own [label,"
                + " first page; then training in catalog/ingredients/paraquat.yaml]"),
        says(
            "restricted-use",
            "a training of a product that is not restricted not known",
            soy(without("clethodim", "terms.training"), "clethodim 0.125 ai")),
        says(
            "restricted-use",
            "paraquat by one of whom no training is written down",
            paraquat(CERTIFIED),
            "note: Paraquat is a restricted-use product, for certified applicators who"
                + " have had the training in paraquat that its label asks for, and wants a"
                + " record with the certificate's number.",
            "ask: whether R. Invented has had the training in paraquat that the label of"
                + " paraquat asks for [the job: applicator, training]"),
        says(
            "restricted-use",
            "paraquat by nobody who is named",
            before(5, "corn", "paraquat 0.5 cation"),
            "note: Paraquat is a restricted-use product, for certified applicators who"
                + " have had the training in paraquat that its label asks for, and wants a"
                + " record with the certificate's number.",
            "ask: whether the applicator has had the training in paraquat that the label"
                + " of paraquat asks for [the job: applicator, training]"),
        says(
            "restricted-use",
            "paraquat by one who has had another training",
            paraquat(new Applicator("R. Invented", "NE-0001", Optional.of(List.of("dicamba")))),
            "warn: R. Invented has not had the training in paraquat that the label of"
                + " paraquat asks for. [no training in paraquat; training in paraquat] the"
                + " course, or somebody who has had it",
            "note: Paraquat is a restricted-use product, for certified applicators who"
                + " have had the training in paraquat that its label asks for, and wants a"
                + " record with the certificate's number."),
        says(
            "restricted-use",
            "paraquat by one who has had its training",
            paraquat(new Applicator("R. Invented", "NE-0001", Optional.of(List.of("paraquat")))),
            "note: Paraquat is a restricted-use product, for certified applicators who"
                + " have had the training in paraquat that its label asks for, and wants a"
                + " record with the certificate's number."));
  }

  private static List<SaidCase> papers() {
    return List.of(
        says(
            "registration-status",
            "2,4-D choline in California",
            soy("2,4-D choline 0.95 ae").field(f -> f.state("CA")),
            "block: 2,4-D choline on soybean after emergence is registered in AL, AR, AZ,"
                + " CO, DE, FL, GA, IA, IL, IN, KS, KY, LA, MD, MI, MN, MO, MS, NC, ND, NE, NJ,"
                + " NM, NY, OH, OK, PA, SC, SD, TN, TX, VA, WI, WV only; this field is in CA."
                + " [CA; in AL, AR, AZ, CO, DE, FL, GA, IA, IL, IN, KS, KY, LA, MD, MI, MN, MO,"
                + " MS, NC, ND, NE, NJ, NM, NY, OH, OK, PA, SC, SD, TN, TX, VA, WI, WV only]"
                + " another active"),
        says(
            "registration-status",
            "a state that nobody wrote down",
            soy("2,4-D choline 0.95 ae").field(FieldBuilder::stateUnknown),
            "ask: state of the field: 2,4-D choline is not registered in all [column state"
                + " of fields.csv]"),
        says(
            "registration-status",
            "a label of 2025 to 2026 in 2027",
            soy(
                Restated.value(
                    STARTER, "clethodim", "use.registration.years", new LabelYears(2025, 2026)),
                "clethodim 0.125 ai"),
            "block: Clethodim on soybean after emergence is registered for 2025 to 2026"
                + " only; this pass is in 2027. [2027; 2025 to 2026] the current label, if the"
                + " use was registered anew; or another active"),
        says(
            "registration-status",
            "a label of 2027",
            soy(
                Restated.value(
                    STARTER, "clethodim", "use.registration.years", new LabelYears(2027, 2027)),
                "clethodim 0.125 ai")),
        says(
            "registration-status",
            "a label of 2028 on",
            soy(
                Restated.value(
                    STARTER, "clethodim", "use.registration.years", new LabelYears(2028, 2030)),
                "clethodim 0.125 ai"),
            "block: Clethodim on soybean after emergence is registered for 2028 to 2030"
                + " only; this pass is in 2027. [2027; 2028 to 2030] the current label, if the"
                + " use was registered anew; or another active"),
        says(
            "registration-status",
            "years of the label not known",
            soy(without("clethodim", "use.registration.years"), "clethodim 0.125 ai")),
        says(
            "catalog-stale",
            "a label that ends in 2026, sprayed in the fall of 2026 for 2027",
            fall(2026),
            "warn: The label of glyphosate that the catalog has for this use is one of"
                + " 2026 at the latest, and the season is 2027. [label of 2026; label of 2027]"
                + " read the label of 2027 and mend labelYears"),
        says("catalog-stale", "a label that ends in 2027", fall(2027)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysAndAsksAllOfIt(SaidCase c) {
    c.holds();
  }
}
