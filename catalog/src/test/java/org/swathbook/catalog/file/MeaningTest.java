package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of mistake, made in a sound catalog one at a time, is found where it stands. */
class MeaningTest {
  private static final String SOY = "crops/soybean.yaml";
  private static final String CORN = "crops/corn.yaml";
  private static final String WEED = "weeds/amapa.yaml";
  private static final String MET = "ingredients/metribuzin.yaml";
  private static final String GLY = "ingredients/glyphosate.yaml";
  private static final String LIQUID = "products/glyphosate-4.5sl.yaml";
  private static final String DRY = "products/metribuzin-75wg.yaml";
  private static final String TABLE = "responses.csv";
  private static final String PAIRS = "interactions.yaml";

  @Test
  void theCatalogIsSoundAsItIs() {
    assertThat(new SmallCatalog().problems()).isEmpty();
    assertThat(new SmallCatalog().asStarter().problems()).isEmpty();
  }

  /**
   * Puts a mistake in the place of a piece. The problem must stand where the mistake has a caret,
   * and be said in one line with both halves; what follows from the mistake may be told too.
   */
  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource({"crops", "weeds", "ingredients", "uses", "terms", "products", "tables", "sources"})
  void aMistakeIsFoundWhereItStands(String path, String piece, String mistake, String what) {
    SmallCatalog marked = new SmallCatalog().with(path, piece, mistake);
    String[] before = marked.text(path).split("\\^", 2)[0].split("\n", -1);
    String place = path + ":" + before.length + ":" + (before[before.length - 1].length() + 1);
    assertThat(marked.with(path, "^", "").problems())
        .hasSizeLessThanOrEqualTo(3)
        .anyMatch(p -> p.startsWith(place + ": " + what))
        .allMatch(p -> p.startsWith(path + ":") && p.matches("[^;]+:\\d+:\\d+: .+; .+"));
  }

  static Stream<Arguments> crops() {
    return Stream.of(
        arguments(
            SOY, "swathbook.crop/1", "^swathbook.crop/2", "'swathbook.crop/2' is not the format"),
        arguments(SOY, "id: soybean", "id: ^Soybean", "'Soybean' is no id"),
        arguments(SOY, "id: soybean", "id: ^soy", "the file soybean.yaml holds 'soy'"),
        arguments(SOY, "aliases: [soya]", "aliases: [^corn]", "the name 'corn' already"),
        arguments(SOY, "reviewed: 2026-11-01", "reviewed: ^11/1/2026", "'11/1/2026' is no"),
        arguments(SOY, "format: swathbook.crop/1\nid", "^id", "the key 'format' is missing"),
        arguments(SOY, "aliases:", "^alias:", "the key 'alias' is not known here"),
        arguments(SOY, "V2: {days: 15}", "^V2: {days: 9}", "the stage V2 does not come after"),
        arguments(SOY, "V2: {days: 15}", "^v1: {days: 15}", "the stage v1 does not come"),
        arguments(SOY, "V2: {days: 15}", "V2: {^day: 15}", "the key 'day' is not known here"),
        arguments(CORN, "V3: 361", "^V3: 97", "the stage V3 does not come after"),
        arguments(CORN, "86/50 F", "^50/86 F", "the ceiling of '50/86 F' does not lie above"),
        arguments(CORN, "86/50 F", "^sums", "'sums' is no way to count degree-days"),
        arguments(SOY, "base: 50 F", "base: ^50", "'50' has no unit"),
        arguments(SOY, "from: planting", "from: ^emergence", "'emergence' is not known here"),
        arguments(SOY, "emergence: VE", "emergence: ^VC", "'VC' is no stage of this crop"),
        arguments(SOY, "emergence: VE", "emergence: ^V1", "the emergence stage counts days"),
        arguments(SOY, "[V1, V2, V3]", "^[V1, V3, V2]", "the leaf stage V2 does not come"),
        arguments(SOY, "R1: 60", "^R7: 60", "'R7' is no stage of this crop"),
        arguments(SOY, "V3: 8 in", "V3: ^8", "'8' has no unit"),
        arguments(SOY, "V3: 8 in", "V3: ^8 lb", "'8 lb' has the wrong kind of unit"),
        arguments(SOY, "20 bu/acre", "^20 lb/acre", "'20 lb/acre' is no yield"),
        arguments(CORN, "canopy: {at: V6}", "canopy: {at: ^V9}", "'V9' is no stage of this"),
        arguments(
            CORN, "canopy: {at: V6}", "canopy: ^{neverBelow: 9 bu/acre}", "the rows close at"),
        arguments(CORN, "{bare: V3, ", "^{", "no stage without a residual is given"),
        arguments(SOY, "+1 stages", "^+3 stages", "'+3 stages' from V2 leaves"));
  }

  static Stream<Arguments> weeds() {
    return Stream.of(
        arguments(WEED, "eppo: AMAPA", "eppo: ^AMATU", "the file amapa.yaml holds 'amatu'"),
        arguments(WEED, "eppo: AMAPA", "eppo: ^pigweed", "'pigweed' is no EPPO code"),
        arguments(WEED, "kind: broadleaf", "kind: ^broad", "'broad' is not known here"),
        arguments(WEED, "{10 %: 90, 50 %: 180", "^{10 %: 90, 50 %: 80", "the points do not rise"),
        arguments(
            WEED, "{share: 5 %, until: 900", "^{share: 5 %, until: 300", "the tail ends before"),
        arguments(WEED, "{share: 5 %", "^{share: 50 %", "the tail holds more than"),
        arguments(
            WEED, "  tail: {", "  water: {base: ^-10}\n  tail: {", "'-10' is no water potential"),
        arguments(
            WEED,
            "  tail: {",
            "  water: {base: ^-0.01 MPa}\n  tail: {",
            "'-0.01 MPa' is not below that of drained soil"),
        arguments(WEED, "share: 5 %", "share: ^500 %", "'500 %' is no share"),
        arguments(WEED, "start: Jan 1", "start: ^Jan 32", "there is no day 'Jan 32'"),
        arguments(WEED, "base: 10 C", "base: ^50 F", "'50 F' is not in °C"),
        arguments(WEED, "0.2 cm per degree-day", "^0.2 cm", "'0.2 cm' is no growth"),
        arguments(WEED, "r: 0.03", "r: ^0", "'0' is not above zero"),
        arguments(WEED, "soybean: {i", "^soyban: {i", "the catalog has no crop 'soyban'"),
        arguments(WEED, "40 % per plant/m2", "^40 %", "'40 %' is no loss per plant"),
        arguments(WEED, "a: 80 %", "a: ^180 %", "'180 %' is no share"),
        arguments(WEED, "{emerged: 5 %, ", "^{", "the key 'emerged' is missing"));
  }

  static Stream<Arguments> ingredients() {
    return Stream.of(
        arguments(MET, "name: metribuzin", "name: ^atrazine", "the file metribuzin.yaml holds"),
        arguments(MET, "site: 5", "site: ^99", "'99' is no site of action"),
        arguments(MET, "rateBasis: ai", "rateBasis: ^lb", "'lb' is not known here"),
        arguments(MET, "movement: xylem", "movement: ^xylen", "'xylen' is not known here"),
        arguments(MET, "at: 0.25 lb/acre", "at: ^0.25 lb ae/acre", "'0.25 lb ae/acre' counts"),
        arguments(MET, "at: 0.25 lb/acre", "at: ^1 pt/acre", "'1 pt/acre' is a volume"),
        arguments(MET, "at: 0.25 lb/acre", "at: ^4 oz/acre", "'4 oz/acre' says oz"),
        arguments(
            MET,
            "{at: 0.50 lb/acre, days: 50",
            "^{at: 0.50 lb/acre, days: 20",
            "the residual at the high rate is below"),
        arguments(MET, "  residualHigh", "  ^residual2", "the key 'residual2' is not known"),
        arguments(MET, "halfLife: 40 days", "halfLife: ^40 in", "'40 in' has the wrong kind"),
        arguments(MET, "foliar: none", "foliar: {rainfast: ^1}", "'1' has no unit"),
        arguments(MET, "usesComplete: yes", "usesComplete: ^true", "'true' is neither"),
        arguments(MET, "corn: 4 months", "^maize: 4 months", "the catalog has no crop 'maize'"),
        arguments(MET, "corn: 4 months", "corn: ^4", "'4' is no waiting time"),
        arguments(
            MET,
            "corn: 4 months",
            "corn: [{soilPh: ^7, interval: 4 months}]",
            "'7' does not say which side"),
        arguments(MET, "corn: 4 months", "corn: [^{soilPh: \"< 7\"}]", "the key 'interval' is"),
        arguments(
            MET,
            "corn: 4 months",
            "corn: [{rateAbove: ^1 lb ae/acre, interval: none}]",
            "'1 lb ae/acre' counts"),
        arguments(MET, "reentry: 12 h", "reentry: ^12", "'12' has no unit"),
        arguments(GLY, "glyphosate acid", "^metribuzin", "the name 'metribuzin' already"));
  }

  static Stream<Arguments> uses() {
    return Stream.of(
        arguments(MET, "- crop: soybean", "- crop: ^soybeen", "the catalog has no crop"),
        arguments(MET, "[preplant, pre]", "[^preplnt, pre]", "'preplnt' is not known here"),
        arguments(GLY, "position: [burndown]", "position: ^[]", "the list is empty"),
        arguments(GLY, "position: [burndown]", "position: ^[post]", "a use for any crop cannot"),
        arguments(MET, "before: emergence", "before: ^V4", "'V4' is neither a stage of"),
        arguments(MET, "before: emergence", "to: ^sometime", "'sometime' is neither a"),
        arguments(GLY, "{before: emergence}", "{before: ^V3}", "'V3' is no point in time"),
        arguments(GLY, "{from: emergence, before: R1", "^{from: R1, before: V3", "the window"),
        arguments(
            MET,
            "{from: 30 days before planting, before: emergence",
            "^{from: 30 days before planting, to: 40 days before planting",
            "the window 'from 30 days before planting through 40"),
        arguments(GLY, "timing: {before: emergence}", "timing: ^{}", "the window has no end"),
        arguments(GLY, "trait: glyphosate", "trait: ^glyfosate", "'glyfosate' is no trait"),
        arguments(MET, "texture: coarse", "texture: ^sandy", "'sandy' is no soil texture"),
        arguments(MET, "\"< 2 %\"", "^\"2 %\"", "'2 %' does not say which side"),
        arguments(MET, "\"< 2 %\"", "^\"< 2\"", "'2' has no unit"),
        arguments(
            MET,
            "{texture: coarse, organicMatter: \"< 2 %\", refused: yes}",
            "^{texture: coarse, organicMatter: \"< 2 %\", }",
            "a row either states a rate or refuses"),
        arguments(MET, "0.25-0.50 lb ai", "^0.50-0.25 lb ai", "the range '0.50-0.25 lb ai/acre'"),
        arguments(MET, "0.25-0.50 lb ai", "^0.25-0.50 lb ae", "'0.25-0.50 lb ae/acre' counts"),
        arguments(
            GLY, "0.75-1.5 lb ae/acre", "^0.75-1.5 lb/acre", "'0.75-1.5 lb/acre' does not say"),
        arguments(
            GLY,
            "1.5 lb ae/acre\n    cap: ",
            "9 lb ae/acre\n    cap: ^",
            "the cap of 6 lb ae/acre lies"),
        arguments(
            GLY,
            "- {amount: 6 lb ae/acre, per: calendar-year}\n      - {amount: 2.25 lb",
            "^- {amount: 6 lb ae/acre, per: calendar-year}\n      - {amount: 1 lb",
            "the cap of 1 lb ae/acre lies"),
        arguments(GLY, "per: season", "per: ^year", "'year' is not known here"),
        arguments(MET, "{upTo: 0.50 lb", "^{upTo: 0.20 lb", "no rate can reach this row"),
        arguments(MET, "days: 14", "days: ^two weeks", "'two weeks' is no whole number"),
        arguments(MET, "soilPh: {before: 7.5}", "soilPh: {before: ^75}", "'75' is no pH"),
        arguments(
            MET, "soilPh: {before: 7.5}", "soilPh: ^{from: 8, before: 7}", "'from' lies above"),
        arguments(MET, "applications: 1", "applications: ^0", "'0' allows none"),
        arguments(MET, "applications: 1", "applications: ^1.5", "'1.5' is no whole number"),
        arguments(MET, "repeat: none", "repeat: ^12", "'12' has no unit"),
        arguments(MET, "forage: 40 days", "^fodder: 40 days", "the key 'fodder' is not"),
        arguments(MET, "forage: 40 days", "forage: ^no", "'no' does not start with a number"),
        arguments(
            MET,
            "repeat: none",
            "repeat: none\n    weedRate: {weeds: [^NOSUC], least: 0.2 lb ai/acre}",
            "the catalog has no weed 'NOSUC'"),
        arguments(
            MET,
            "repeat: none",
            "repeat: none\n    weedRate: ^{weeds: [KCHSC], least: 5 lb ai/acre}",
            "the least rate of 5 lb ai/acre for a weed is above"),
        arguments(
            MET,
            "repeat: none",
            "repeat: none\n    weedRate: ^[{weeds: [KCHSC], least: 0.2 lb ai/acre}, {weeds: [KCHSC],"
                + " upTo: 4 in, least: 0.1 lb ai/acre}]",
            "no plant can reach a row of it"),
        arguments(
            MET, "repeat: none", "repeat: none\n    incorporate: ^never", "'never' is not known"),
        arguments(
            MET, "repeat: none", "repeat: none\n    weedHeight: {broadleaf: ^4}", "'4' has no"),
        arguments(
            MET, "repeat: none", "repeat: none\n    cropHeight: ^12 in", "'12 in' does not say"),
        arguments(
            MET, "repeat: none", "repeat: none\n    state: {only: [^Nebraska]}", "'Nebraska'"),
        arguments(
            MET, "repeat: none", "repeat: none\n    labelYears: ^2027-2026", "'2027-2026' runs"),
        arguments(MET, "repeat: none", "repeat: none\n    cutoff: [{date: ^06-31}]", "there is no"),
        arguments(
            MET, "repeat: none", "repeat: none\n    formulations: [^XX]", "'XX' is no formul"));
  }

  static Stream<Arguments> terms() {
    return Stream.of(
        arguments(GLY, "min: 5 gal/acre", "min: ^5 lb/acre", "'5 lb/acre' is no volume"),
        arguments(
            GLY, "min: 5 gal/acre", "fertilizer: ^no", "'no' is not known here; write 'refused"),
        arguments(GLY, "ammonium-sulfate", "^amonium-sulfate", "'amonium-sulfate' is not"),
        arguments(GLY, "without: warn", "without: ^no", "'no' is not known here"),
        arguments(GLY, "8.5 lb/100 gal", "^some", "'some' does not start with a number"),
        arguments(GLY, "from: medium", "from: ^middling", "'middling' is not known here"),
        arguments(GLY, "{from: medium", "^{from: ultra coarse", "'from' is coarser than 'to'"),
        arguments(MET, "only: [glyphosate]", "only: [^glifosate]", "the catalog has no ingr"),
        arguments(MET, "{only: [glyphosate]}", "^{}", "a list of partners either allows"),
        arguments(MET, "triple-rinse", "^rinse twice", "'rinse twice' is not known here"),
        arguments(MET, "sensitive: [corn]", "sensitive: [^vines]", "the catalog has no crop"),
        arguments(MET, "{min: 3 mph", "^{min: 30 mph", "'min' lies above 'max'"),
        arguments(MET, "min: 3 mph", "min: ^3", "'3' has no unit"),
        arguments(MET, "inversion: refused", "inversion: ^no", "'no' is not known here"),
        arguments(
            MET,
            "inversion: refused",
            "hours: {from: ^1 h before noon, to: sunset}",
            "'1 h before noon' is no time by the sun"),
        arguments(MET, "inversion: refused", "buffer: ^{up: 9 ft}", "the key 'downwind' is"),
        arguments(MET, "inversion: refused", "^temprature: {}", "the key 'temprature' is"));
  }

  static Stream<Arguments> products() {
    return Stream.of(
        arguments(LIQUID, "name: glyphosate-4.5sl", "name: ^other", "the file glyphosate-4.5sl"),
        arguments(LIQUID, "ingredient: glyphosate", "ingredient: ^x", "the catalog has no ingr"),
        arguments(LIQUID, "4.5 lb ae/gal", "^4.5 lb ai/gal", "'4.5 lb ai/gal' counts ai"),
        arguments(LIQUID, "4.5 lb ae/gal", "^4.5 lb/gal", "'4.5 lb/gal' does not say of what"),
        arguments(LIQUID, "4.5 lb ae/gal", "^4.5", "'4.5' is no concentration"),
        arguments(LIQUID, "formulation: SL", "formulation: ^LS", "'LS' is no formulation code"),
        arguments(LIQUID, "unit: fl oz/acre", "unit: ^oz/acre", "'oz/acre' says oz"),
        arguments(LIQUID, "unit: fl oz/acre", "unit: ^lb ae/acre", "'lb ae/acre' is a unit of"),
        arguments(LIQUID, "unit: fl oz/acre", "unit: ^lb/acre", "'lb/acre' is no volume"),
        arguments(LIQUID, "step: 1 fl oz/acre", "step: ^0 fl oz/acre", "'0 fl oz/acre' is nothing"),
        arguments(LIQUID, "package: 2.5 gal", "package: ^20 lb", "'20 lb' is no volume"),
        arguments(
            LIQUID,
            "{id: DEMO-1, reviewed: 2026-10-15",
            "^{id: DEMO-1",
            "the key 'reviewed' is missing"),
        arguments(DRY, "unit: oz weight/acre", "unit: ^pt/acre", "'pt/acre' is no weight"),
        arguments(
            DRY,
            "75 %}",
            "75 %}, ^{ingredient: metribuzin, concentration: 5 %}",
            "'metribuzin' stands here twice"),
        arguments(
            DRY,
            "75 %}",
            "75 %}, ^{ingredient: glyphosate, concentration: 3 lb ae/gal}",
            "one strength is by volume"),
        arguments(DRY, "[{ingredient: metribuzin, concentration: 75 %}]", "^[]", "the product"));
  }

  static Stream<Arguments> tables() {
    return Stream.of(
        arguments(TABLE, "AMAPA,metribuzin", "^AMAPI,metribuzin", "the catalog has no weed"),
        arguments(TABLE, "AMAPA,metribuzin", "AMAPA,^metri", "the catalog has no ingredient"),
        arguments(TABLE, "pre,80", "^early,80", "'early' is not known here"),
        arguments(TABLE, "pre,80", "pre,^180", "'180' is no percentage"),
        arguments(TABLE, "pre,80", "pre,^", "'emaxPct' is empty"),
        arguments(TABLE, "pre,80", "pre,^95", "the typical control does not lie between"),
        arguments(TABLE, "90,,from", "90,^4,from", "a height stands in a row on control from"),
        arguments(TABLE, ",4,from", ",^0,from", "'0' is no height"),
        arguments(TABLE, "medium", "^fair", "'fair' is not known here"),
        arguments(
            TABLE,
            "AMAPA,glyphosate,post,95,90,99,4",
            "^AMAPA,metribuzin,pre,95,90,99,",
            "this weed, ingredient and timing stand in the table twice"),
        arguments(PAIRS, "[glyphosate, {site: 5}]", "^[glyphosate]", "an interaction has two"),
        arguments(PAIRS, "{site: 5}", "{site: ^4}", "no ingredient of the catalog has site 4"),
        arguments(PAIRS, "[glyphosate, {", "[^dicamba, {", "the catalog has no ingredient"),
        arguments(PAIRS, "on: broadleaf", "on: [^SETFA]", "the catalog has no weed 'SETFA'"),
        arguments(PAIRS, "affects: glyphosate", "affects: ^metribuzin", "what is affected is"),
        arguments(PAIRS, "kind: antagonism", "kind: ^safening", "'safening' is not known here"),
        arguments(PAIRS, "loses: 10-30 %", "loses: ^10-130 %", "'130 %' is no share"),
        arguments(PAIRS, "unless: glyphosate at 1.1 lb ae/acre or more", "unless: ^much", "'mu"),
        arguments(
            PAIRS,
            "glyphosate at 1.1 lb ae",
            "^glyphosate at 1.1 lb ai",
            "'1.1 lb ai/acre' counts ai"));
  }

  static Stream<Arguments> sources() {
    return Stream.of(
        arguments(MET, "[soil.halfLife]", "[^soil.halflife]", "the path 'soil.halflife' leads"),
        arguments(MET, "[uses.soybean.pre]", "[^uses.corn.pre]", "the path 'uses.corn.pre'"),
        arguments(
            MET,
            "{for: [soil.halfLife], source: a paper",
            "^{for: [soil.halfLife], origin: a paper",
            "the key 'source' is missing"),
        arguments(MET, "[soil.halfLife]", "^{}", "here stands a map of keys"));
  }

  @Test
  void aStarterValueWithoutSourceIsFound() {
    assertThat(
            new SmallCatalog()
                .asStarter()
                .with("ingredients/metribuzin.yaml", "  - {for: [all], source: from memory}\n", "")
                .problems())
        .contains(
            "ingredients/metribuzin.yaml:13:9: 'foliar' has no source; add it under sources, as"
                + " '{for: [foliar], source: from memory}'",
            "ingredients/metribuzin.yaml:38:9: 'rotation.corn' has no source; add it under"
                + " sources, as '{for: [rotation.corn], source: from memory}'")
        .noneMatch(p -> p.contains("uses.soybean.pre") || p.contains("'soil"));
    assertThat(
            new SmallCatalog()
                .asStarter()
                .with("responses.csv", "90,,from memory", "90,,")
                .with("interactions.yaml", "    source: from memory\n", "")
                .problems())
        .hasSize(2)
        .allMatch(p -> p.contains("has no source"));
  }

  @Test
  void oneBrokenFileMakesNoStrangersOfThoseThatNameIt() {
    assertThat(new SmallCatalog().file("crops/soybean.yaml", "id: [").problems())
        .singleElement()
        .asString()
        .startsWith("crops/soybean.yaml:1:5: a bracket is not closed");
    assertThat(new SmallCatalog().file("ingredients/glyphosate.yaml", "a").problems()).hasSize(1);
  }

  @Test
  void allMistakesOfAllFilesAreToldAtOnce() {
    assertThat(
            new SmallCatalog()
                .with(MET, "site: 5", "site: x")
                .with(WEED, "a: 80 %", "a: 180 %")
                .with(TABLE, "pre,80", "pre,180")
                .problems())
        .hasSize(3);
  }
}
