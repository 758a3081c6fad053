package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.SprayJob;
import org.swathbook.source.ProblemsException;
import org.swathbook.testing.Fixtures;

class MixReaderTest {
  private static final String HEAD =
      """
      format: swathbook.mix/1
      field: ND-1
      date: 2027-06-08
      """;
  private static final String PRODUCTS =
      """
      products:
        - {ingredient: glyphosate, rate: 1.0 lb ae/acre}
      """;

  private static SprayJob read(String text) {
    return MixReader.read("m.yaml", text.getBytes(StandardCharsets.UTF_8), Fixtures.book());
  }

  private static List<String> problems(String text) {
    ProblemsException e = catchThrowableOfType(ProblemsException.class, () -> read(text));
    return e.problems().stream().map(Object::toString).toList();
  }

  @Test
  void everyKeyIsRead() {
    SprayJob job =
        read(
            HEAD
                + """
                method: drop-nozzle
                time: "10:30"
                cropStage: v3
                cropHeight: 9 in
                weeds: {AMAPA: 3 in, giant foxtail: 4 in}
                adjuvants: [{kind: ammonium-sulfate, rate: 8.5 lb/100 gal}]
                carrier: {volume: 15 gal/acre, water: {hardness: 320 ppm CaCO3, ph: 7.6, iron: 0.3 ppm}}
                application: {droplets: very coarse, speed: 10 mph, pressure: 40 psi, nozzlesListed: yes}
                sprayer: {tank: 1200 gal, lastLoad: [S-metolachlor, glyphosate], cleaned: triple-rinse}
                weather: {wind: 7 mph, gust: 9 mph, windFrom: W, temperature: 78 F, high: 84 F,
                  nightLow: 58 F, humidity: 55 %, inversion: no, rainIn: 12 h, rainNext24h: 0.1 in,
                  rainNext48h: 0.2 in, rainNext10d: 1 in, meanPast3d: 61 F, meanNext3d: 18 C}
                others: [organophosphate]
                """
                + PRODUCTS);

    assertThat(job.method()).isEqualTo(Method.DROP_NOZZLE);
    assertThat(job.time()).contains(LocalTime.of(10, 30));
    assertThat(job.scouted().cropStage()).contains("V3");
    assertThat(job.scouted().cropHeightCm().orElseThrow()).isCloseTo(22.86, within(1e-9));
    assertThat(job.scouted().weedHeightCm().get(WeedId.of("SETFA"))).isCloseTo(10.16, within(1e-9));
    assertThat(job.mix().gallonsPerAcre()).hasValue(15);
    assertThat(job.carrier().hardnessPpmCaCo3()).hasValue(320);
    assertThat(job.carrier().ironPpm()).hasValue(0.3);
    assertThat(job.setup().droplets()).contains(DropletClass.VERY_COARSE);
    assertThat(job.setup().pressurePsi()).hasValue(40);
    assertThat(job.setup().nozzlesListed()).contains(true);
    assertThat(job.tank().lastLoad().orElseThrow()).hasSize(2);
    assertThat(job.tank().cleaned()).contains(Rinse.TRIPLE_RINSE);
    assertThat(job.weather().windFromDegrees()).hasValue(270);
    assertThat(job.weather().humidityPct().orElseThrow()).isCloseTo(55, within(1e-9));
    assertThat(job.weather().inversion()).contains(false);
    assertThat(job.weather().rainNext10dIn().orElseThrow()).isCloseTo(1, within(1e-9));
    assertThat(job.weather().meanPast3dF().orElseThrow()).isCloseTo(61, within(1e-9));
    assertThat(job.weather().meanNext3dF().orElseThrow()).isCloseTo(64.4, within(1e-9));
    assertThat(job.weather().windForecast()).isFalse();
    assertThat(job.others()).containsExactly("organophosphate");
  }

  @Test
  void whatIsLeftOutIsNotKnown() {
    SprayJob job = read(HEAD + PRODUCTS);

    assertThat(job.time()).isEmpty();
    assertThat(job.tank().lastLoad()).isEmpty();
    assertThat(job.weather().windMph()).isEmpty();
    assertThat(job.weather().inversion()).isEmpty();
    assertThat(read(HEAD + "sprayer: {lastLoad: none}\n" + PRODUCTS).tank().lastLoad())
        .contains(List.of());
  }

  @Test
  void everyMistakeIsNamedWithItsPlace() {
    List<String> said =
        problems(
            """
            format: swathbook.mix/1
            field: ND-9
            date: 2031-06-08
            weeds: {AMAPX: 3 in}
            products:
              - {product: glyphosat, rate: 32 fl oz/acre}
            carrier: {water: {hardness: 320 ppm}}
            weather: {windFrom: up, windd: 7 mph}
            """);

    assertThat(said).hasSize(7);
    assertThat(said.get(0)).startsWith("m.yaml:2:8: 'ND-9' is no field of the book");
    assertThat(said).anyMatch(s -> s.contains("'2031-06-08' is not in the season 2027"));
    assertThat(said).anyMatch(s -> s.startsWith("m.yaml:4:9: 'AMAPX' is no weed"));
    assertThat(said).anyMatch(s -> s.contains("does not say of what the hardness is"));
    assertThat(said).anyMatch(s -> s.contains("'up' is no direction"));
    assertThat(said).anyMatch(s -> s.contains("the key 'windd' is not known here; did you mean"));
  }

  @Test
  void aMixWithoutProductsIsRefused() {
    assertThat(problems(HEAD + "products: []\n"))
        .singleElement()
        .satisfies(s -> assertThat(s).contains("the mix is empty"));
  }

  /**
   * One grain a US gallon is 17.118 ppm (NIST Handbook 44 units); hardness of calcium and magnesium
   * by Standard Methods 2340 B, 2.497 Ca + 4.118 Mg (from memory).
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "320 ppm CaCO3 | 320",
        "10 grains/gal | 171.18",
        "100 ppm Ca | 249.7",
        "80 ppm Ca, 20 ppm Mg | 282.12"
      })
  void hardness(String text, double ppm) {
    assertThat(MixCells.hardnessPpmCaCo3(text)).isCloseTo(ppm, within(0.01));
  }

  @Test
  void directions() {
    assertThat(MixCells.degrees("n")).isZero();
    assertThat(MixCells.degrees("SSW")).isEqualTo(202.5);
    assertThat(MixCells.degrees("280 degrees")).isEqualTo(280);
    assertThat(MixCells.degrees("360 degrees")).isZero();
    assertThat(catchThrowableOfType(MeasureException.class, () -> MixCells.degrees("400 degrees")))
        .hasMessageContaining("is no direction");
  }
}
