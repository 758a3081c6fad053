package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.testing.DemoBook;
import org.swathbook.testing.Restated;

class BookYamlReaderTest {
  @TempDir Path dir;

  private BookOnDisk with(String more) {
    return new BookOnDisk(dir).with("book.yaml", BookOnDisk.soundText("book.yaml") + more);
  }

  @Test
  void aBookWithoutHouseRulesHasTheDefaults() {
    Book book = new BookOnDisk(dir).load();
    assertThat(book.house()).isEqualTo(HouseRules.DEFAULTS);
    assertThat(book.passCost()).isEqualTo(new Money(900));
    assertThat(book.resprayExtra()).isEqualTo(Money.ZERO);
    assertThat(book.crops().keySet()).containsExactly(CropId.of("corn"), CropId.of("soybean"));
  }

  @Test
  void whatIsWrittenReplacesTheDefaultAndNothingElse() {
    HouseRules rules =
        with("""
                houseRules:
                  seasonControl: 97.5 %
                  minSoilSites: {overlap: 2}
                  maxExposedEmergence: {palmer amaranth: 3 %, kochia: 8 %}
                  maxSurvivors: 0.05 /m2
                  suitableDay: {rain: 2 mm, share: {may: 40 %}}
                  wind: 2-4 m/s
                  catalogAge: 24 months
                  minDaysBetweenPasses: 0
                """)
            .load()
            .house();
    HouseRules d = HouseRules.DEFAULTS;
    assertThat(rules.seasonControl()).isEqualTo(0.975);
    assertThat(rules.minSoilSitesFirst()).isEqualTo(d.minSoilSitesFirst());
    assertThat(rules.minSoilSitesOverlap()).isEqualTo(2);
    assertThat(rules.maxExposed(WeedId.of("AMAPA"))).isEqualTo(0.03);
    assertThat(rules.maxExposed(WeedId.of("AMATU"))).isEqualTo(0.05);
    assertThat(rules.maxExposed(WeedId.of("KCHSC"))).isEqualTo(0.08);
    assertThat(rules.maxExposed(WeedId.of("SETFA"))).isEqualTo(d.maxExposedEmergenceOthers());
    assertThat(rules.maxSurvivorsPerAcre()).isBetween(202.3, 202.4);
    assertThat(rules.suitableRainMm()).isEqualTo(2);
    assertThat(rules.suitableRainBeforeMm()).isEqualTo(d.suitableRainBeforeMm());
    assertThat(rules.suitableShare(5)).isEqualTo(0.4);
    assertThat(rules.suitableShare(4)).isEqualTo(0.5);
    assertThat(rules.windMinMph()).isBetween(4.4, 4.5);
    assertThat(rules.catalogAgeMonths()).isEqualTo(24);
    assertThat(rules.minDaysBetweenPasses()).isZero();
    assertThat(rules.oneSiteGone()).isEqualTo(d.oneSiteGone());
  }

  @Test
  void theDefaultsAreThoseOfTheDemoBook() {
    assertThat(DemoBook.BOOK.house()).isEqualTo(HouseRules.DEFAULTS);
  }

  @Test
  void wrongKeysAndValues() {
    assertThat(
            with("""
                    catalog: {starter: true, folder: ../elsewhere}
                    unit: us
                    houseRules:
                      effectiveSite: 80
                      seasonControl: 195 %
                      maxExposedEmergence: {AMAPAX: 5 %, others: ten}
                      minSoilSites: 2
                      suitableDay: {rain: 0.1, share: {apl: 50 %}}
                      wind: 10-3 mph
                      catalogAge: 1.5 months
                      maxPases: 3
                      dateStep: 0 days
                      minDaysBetweenPasses: -1
                    """)
                .problems())
        .containsExactly(
            "book.yaml:8:20: 'true' is neither yes nor no; write yes or no",
            "book.yaml:8:34: '../elsewhere' is no folder of the book; write the name of a folder,"
                + " as catalog",
            "book.yaml:9:1: the key 'unit' is not known here; did you mean 'units'?",
            "book.yaml:11:18: '80' has no unit; write for example '95 %'",
            "book.yaml:12:18: '195 %' is no share; write 0 to 100 %",
            "book.yaml:13:25: 'AMAPAX' is no weed of the catalog; did you mean 'AMAPA'?",
            "book.yaml:13:46: 'ten' does not start with a number; write for example '95 %'",
            "book.yaml:14:17: here stands a single value; write '{first: 2, overlap: 1}'",
            "book.yaml:15:23: '0.1' has no unit; write for example '< 0.1 in'",
            "book.yaml:15:36: the key 'apl' is not known here; did you mean 'apr'?",
            "book.yaml:16:9: the range '10-3 mph' runs downwards; write the lower value first",
            "book.yaml:17:15: '1.5 months' is no number of whole months; write for example '18"
                + " months'",
            "book.yaml:18:3: the key 'maxPases' is not known here; did you mean 'maxPasses'?",
            "book.yaml:19:13: '0 days' is out of range; write 1 to 30 days",
            "book.yaml:20:25: '-1' is out of range; write a whole number from 0 to 99");
  }

  @Test
  void daysBetweenPassesAreAWholeNumber() {
    assertThat(with("houseRules:\n  minDaysBetweenPasses: 7 days\n").problems())
        .containsExactly("book.yaml:9:25: '7 days' is no whole number; write one as 3");
    assertThat(with("houseRules:\n  minDaysBetweenPasses: 10\n").load().house())
        .isEqualTo(Restated.with(HouseRules.DEFAULTS, "minDaysBetweenPasses", 10));
  }

  @Test
  void cropsThatCannotBeReadAreNotMissedAgainByEveryField() {
    assertThat(
            new BookOnDisk(dir)
                .with(
                    "book.yaml",
                    BookOnDisk.soundText("book.yaml")
                        .replace("  corn:", "  corm:")
                        .replace("4.35 $/bu", "4.35"))
                .problems())
        .containsExactly(
            "book.yaml:5:3: 'corm' is no crop of the catalog; did you mean 'corn'?",
            "book.yaml:5:17: '4.35' is no price of grain; write for example '4.35 $/bu'");
  }

  @Test
  void metricPrintingIsNotedWhileItDoesNotExist() {
    assertThat(with("units: metric\n").load().notes())
        .containsExactly("book.yaml: metric units are not printed yet; results stand in US units.");
  }
}
