package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.Book;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;

/** Broken files and what is said of each: exact words, exact places. */
class BookProblemsTest {
  private static final String FIELDS = "id,acres,crop,plantDate,tillage,station";
  private static final String FIELD = "A-1,76,soybean,2027-05-11,no-till,hill";
  private static final String CORN = "A-2,40,corn,2027-05-01,tilled,hill";
  private static final String WEEDS =
      "field,weed,density,driver,resistantSites,resistantShare,resistance";
  private static final String JOURNAL =
      "id,line,corrects,date,field,season,product,rate,unit,crop,cropStage";

  @TempDir Path dir;

  @Test
  void theSoundBookHasNoProblem() {
    assertThat(new BookOnDisk(dir).problems()).isEmpty();
  }

  /** One row of fields.csv with a further column, and the problem of that column's cell. */
  private static Arguments field(String column, String cell, String problem) {
    String text = FIELDS + "," + column + "\n" + FIELD + "," + cell + "\n" + CORN + ",\n";
    return Arguments.of("fields.csv", text, List.of("fields.csv:2:40: " + problem));
  }

  private static Arguments weed(String row, String... problems) {
    return Arguments.of("weeds.csv", WEEDS + "\n" + row + "\n", List.of(problems));
  }

  private static Arguments journal(String row, String... problems) {
    return Arguments.of(
        "applications.csv",
        JOURNAL + "\nP-1,1,,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre\n" + row + "\n",
        List.of(problems));
  }

  static Stream<Arguments> fields() {
    return Stream.of(
        field(
            "harvestDate",
            "2027-05-11",
            "harvest on 2027-05-11 is not after planting on 2027-05-11; write the later date here"),
        field(
            "harvestDate",
            "2027-02-30",
            "there is no day '2027-02-30'; write a day of the calendar"),
        field(
            "nextCropPlantDate",
            "2027-04-26",
            "the next crop is planted on 2027-04-26, not after this one on 2027-05-11; write the"
                + " later date here"),
        field(
            "traits",
            "glyfosate",
            "'glyfosate' is no trait that a use needs; did you mean 'glyphosate'?"),
        field(
            "traits",
            "none;dicamba",
            "'none;dicamba' says none and a trait; write none by itself, or the traits alone"),
        field(
            "soilTexture", "siltloam", "'siltloam' is no soil texture; did you mean 'silt loam'?"),
        field("soilPh", "66", "'66' is out of range; write a number from 2 to 12"),
        field(
            "organicMatterPct", "2.6;x", "'x' is no number; write a number as 12.5, without unit"),
        field("residuePct", "160", "'160' is out of range; write a number from 0 to 100"),
        field("lat", "940", "'940' is out of range; write a number from -90 to 90"),
        field("use", "grains", "'grains' is no use of a field; did you mean 'grain'?"),
        field("irrigation", "pivots", "'pivots' is not known here; did you mean 'pivot'?"),
        field("state", "Nebr", "'Nebr' is no state; write its two letters, as NE for Nebraska"),
        field(
            "neighbor",
            "vineyard NE",
            "'vineyard NE' is no neighbor; write what, direction and distance, as 'vineyard NE"
                + " 1500 ft'"),
        field("waterDistance", "800", "'800' has no unit; write for example '800 ft'"),
        field("rowSpacing", "0 in", "'0 in' is not above zero; write as '15 in'"),
        field("nextCrop", "sorgum", "'sorgum' is no crop of the catalog; did you mean 'sorghum'?"),
        field("yieldGoal", "62", "'62' is no yield; write for example '62 bu/acre'"),
        field("erodible", "maybe", "'maybe' is neither yes nor no; write yes or no"),
        Arguments.of(
            "fields.csv",
            FIELDS + "\nA-1,-76,soybean,2027-05-11,notill,hill\nA-2,,corn,,,../hill\n",
            List.of(
                "fields.csv:2:5: '-76' is not above zero; write a number as 76.0",
                "fields.csv:2:28: 'notill' is no tillage; did you mean 'no-till'?",
                "fields.csv:3:5: 'acres' is blank; write for example '76.0'",
                "fields.csv:3:11: 'plantDate' is blank; write for example '2027-05-11'",
                "fields.csv:3:12: 'tillage' is blank; write for example 'no-till'",
                "fields.csv:3:13: '../hill' cannot be a station; write the name of a file in the"
                    + " folder weather, as sedge-fork")),
        Arguments.of(
            "fields.csv",
            FIELDS + "\n" + FIELD + "\n" + FIELD.replace("A-1", "a-1") + "\nTotal,152,,,,\n",
            List.of(
                "fields.csv:3:1: the field 'a-1' stands here again; give every field its own id",
                "fields.csv:4:1: this is a row of totals, not of data; take it out of the table")),
        Arguments.of(
            "fields.csv",
            FIELDS + "\n" + FIELD.replace("2027", "2026") + "\n",
            List.of(
                "fields.csv:2:16: '2026-05-11' is not in the season 2027; write a date from"
                    + " 2026-09-01 to 2027-10-31")),
        Arguments.of(
            "fields.csv",
            FIELDS + "\n" + FIELD.replace("soybean", "wheat") + "\n",
            List.of(
                "fields.csv:2:8: book.yaml has no price for wheat; write it under crops, as 'wheat:"
                    + " {price: 4.35 $/bu, yieldGoal: 205 bu/acre}'")),
        Arguments.of(
            "fields.csv",
            FIELDS.replace("acres", "acre") + "\n" + FIELD + "\n",
            List.of(
                "fields.csv:1:1: the column 'acres' is missing; start the table with"
                    + " 'id,acres,crop,plantDate,tillage,station'",
                "fields.csv:1:4: the column 'acre' is not known; did you mean 'acres'?")));
  }

  static Stream<Arguments> weeds() {
    return Stream.of(
        weed(
            "A-1,AMAPAX,80,yes,,,",
            "weeds.csv:2:5: 'AMAPAX' is no weed of the catalog; did you mean 'AMAPA'?",
            "weeds.csv:2:12: '80' is no density; write for example '80 /m2'"),
        weed(
            "A-9,AMAPA,,perhaps,99,,",
            "weeds.csv:2:1: 'A-9' is no field of fields.csv; did you mean 'A-1'?",
            "weeds.csv:2:11: 'density' is blank; write for example '80 /m2'",
            "weeds.csv:2:12: 'perhaps' is no answer here; write one of: yes, no, zero",
            "weeds.csv:2:20: '99' is no site of action; write its number, as 9 or 2;9"),
        weed(
            "A-1,AMAPA,80 /m2,yes,2;9,60 %,\nA-1,AMAPA,,,14,41 %,",
            "weeds.csv:3:16: the resistant plants of AMAPA in A-1 add up to 101 %; write shares that"
                + " add up to at most 100 % over all rows of the weed"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:30 %; 2:30 %\nA-1,AMAPA,81 /m2,no,4,1 %,",
            "weeds.csv:3:11: line 2 says another density of this weed in this field; write the same"
                + " density, or leave it blank here",
            "weeds.csv:3:18: line 2 answers otherwise for this weed in this field; write the same,"
                + " or leave it blank here"),
        weed(
            "A-1,AMAPA,80 /m2,yes,2,,9:20 %",
            "weeds.csv:2:25: the row fills both resistantSites and resistance; write sites that go"
                + " together in the one, independent entries in the other, in two rows"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,20 %,",
            "weeds.csv:2:23: a share without sites; name the sites in resistantSites, as 2;9, or"
                + " leave the share out"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:20 % maybe",
            "weeds.csv:2:24: 'maybe' is no status; write confirmed, assumed or suspected"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:20 % assumed keeps some",
            "weeds.csv:2:24: 'keeps some' does not say how much control is left; write"
                + " 'metabolic', 'keeps 40 %' or 'keeps 0 % leaf 50 % soil'"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:20 % assumed rapid",
            "weeds.csv:2:24: 'rapid' does not say how much control is left; write"
                + " 'metabolic', 'keeps 40 %' or 'keeps 0 % leaf 50 % soil'"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:20 % keeps 100 %",
            "weeds.csv:2:24: a plant that keeps all of the control resists nothing; leave the"
                + " entry out"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:20 % keeps 140 %",
            "weeds.csv:2:24: '140 %' is no share; write 0 to 100 %"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9 20",
            "weeds.csv:2:24: '9 20' is no resistance; write site or ingredient, share and status, as"
                + " '9:85 % confirmed; dicamba:30 % suspected'"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,9:20 %; 9:30 %",
            "weeds.csv:2:24: '9' stands here twice; keep one entry for each site or ingredient"),
        weed(
            "A-1,AMAPA,80 /m2,yes,,,dicambo:20 %",
            "weeds.csv:2:24: 'dicambo' is no ingredient of the catalog; did you mean 'dicamba'?"),
        weed(
            "A-1,AMAPA,80 /m2,yes,9,120 %,",
            "weeds.csv:2:24: '120 %' is no share; write 0 to 100 %"));
  }

  static Stream<Arguments> journals() {
    return Stream.of(
        journal(
            "P-2,1,,2026-05-01,A-1,2026,atrazin,1.0,lb ai/acre,corn,V99",
            "applications.csv:3:28: 'atrazin' is no product or ingredient of the catalog; did you"
                + " mean 'atrazine'?",
            "applications.csv:3:56: 'V99' is no stage of corn; did you mean 'V9'?"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,glyphosate,32,fl oz/acre,corn,pre",
            "applications.csv:3:42: '32 fl oz/acre' of glyphosate does not say of which strength;"
                + " write a weight of it, or name a product: glyphosate-4.5sl (4.5 lb ae/gal)"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,glyphosate,1,lb/acre,corn,pre",
            "applications.csv:3:41: '1 lb/acre': glyphosate is weighed as ae; write 'lb ae/acre'"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,glyphosate-4.5sl,1,lb ae/acre,corn,pre",
            "applications.csv:3:47: '1 lb ae/acre' weighs an active, glyphosate-4.5sl is a product;"
                + " write its rate as '2 fl oz/acre', or name the ingredient"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,glyphosate-4.5sl,32,oz/acre,corn,pre",
            "applications.csv:3:48: '32 oz/acre' says oz; write 'fl oz' or 'oz weight'"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,metribuzin-75wg,1,pt/acre,corn,pre",
            "applications.csv:3:46: '1 pt/acre' is a volume, metribuzin-75wg is dry; write its rate"
                + " in oz weight/acre"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,glyphosate-4.5sl,,fl oz/acre,corn,pre",
            "applications.csv:3:45: 'rate' is blank; write for example '1.13'"),
        journal(
            "P-2,1,,2026-05-01,A-1,2026,glyphosate-4.5sl,0,fl oz/acre,corn,pre",
            "applications.csv:3:45: '0' is no rate; write what was sprayed, or 0 only to void the"
                + " row that 'corrects' names"),
        journal(
            "P-2,1,,2026-05-01,A-1,2024,atrazine,1.0,lb ai/acre,corn,pre",
            "applications.csv:3:23: a spraying of 2026-05-01 cannot be for the season 2024; write"
                + " the year of the crop's harvest; fall burndown belongs to the next season"),
        journal(
            "P-1,1,,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre",
            "applications.csv:3:5: the line P-1/1 stands here again, first in line 2; count the"
                + " lines of a pass 1, 2, 3; to mend a row name it in 'corrects'"),
        journal(
            "P-1,2,,2026-05-01,A-2,2026,atrazine,1.0,lb ai/acre,corn,pre",
            "applications.csv:3:1: the pass P-1 is on A-2 here and on A-1 above; give the pass of"
                + " every field its own id"),
        journal(
            "P-2,1,P-9/1,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre",
            "applications.csv:3:7: no row above is 'P-9/1'; write id and line of the row that is"
                + " wrong, as A-27-001/2"),
        journal(
            "P-1,2,,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre\n"
                + "P-1,3,P-1,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre",
            "applications.csv:4:7: the pass P-1 has 2 lines; say which one is wrong, as P-1/1"),
        journal(
            "P-1,2,P-1/1,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre\n"
                + "P-1,3,P-1/1,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre",
            "applications.csv:4:7: P-1/1 is corrected already, in line 3; correct the row in that"
                + " line"));
  }

  static Stream<Arguments> others() {
    return Stream.of(
        Arguments.of(
            "prices.csv",
            """
            product,price,package,onHand
            glyphosate,18 $/gal,,
            glyphosate-4.5sl,18 $/lb,2 lb,x
            metribuzin-75wg,18,,
            metribuzin-75wg,18 $/lb,,
            """,
            List.of(
                "prices.csv:2:1: 'glyphosate' is an ingredient, not a product; name a product:"
                    + " glyphosate-4.5sl (4.5 lb ae/gal)",
                "prices.csv:3:18: '18 $/lb' does not fit glyphosate-4.5sl, a liquid; write for"
                    + " example '24 $/gal'",
                "prices.csv:3:26: '2 lb' does not fit glyphosate-4.5sl, a liquid; write for example"
                    + " '24 gal'",
                "prices.csv:3:31: 'x' does not start with a number; write for example '24 gal'",
                "prices.csv:4:17: '18' is no price; write for example '24.00 $/gal'",
                "prices.csv:5:1: metribuzin-75wg has a price already; keep one row for each"
                    + " product")),
        Arguments.of(
            "seasons.csv",
            """
            field,season,crop,tillage,plantDate,harvestDate
            A-1,2027,corn,no-till,,
            A-1,2026,corn,no-till,2025-05-01,2025-04-01
            A-1,2026,corn,no-till,,
            """,
            List.of(
                "seasons.csv:2:5: '2027' is not before the book's season 2027; write here only what"
                    + " grew in years gone by",
                "seasons.csv:3:23: '2025-05-01' is not in the season 2026; write a date from"
                    + " 2025-09-01 to 2026-10-31",
                "seasons.csv:4:5: A-1 has a row for 2026 already; keep one row for each field and"
                    + " season")),
        Arguments.of(
            "weather/hill.csv",
            """
            date,tmax_c,tmin_c,rain_mm
            2026-05-01,70,8,0
            2026-05-02,7,8,-1
            2026-05-05,17,8,
            2026-05-05,17,8,t
            x,17,8,0
            2026-05-09,17,8,0
            """,
            List.of(
                "weather/hill.csv:2:12: '70' is no temperature of the air; check the unit that the"
                    + " column names",
                "weather/hill.csv:3:16: '-1' is out of range; write a number from 0 to 2000",
                "weather/hill.csv:3:12: the highest temperature is below the lowest; exchange the"
                    + " two, or mend the one that is wrong",
                "weather/hill.csv:5:1: 2026-05-05 comes after 2026-05-05; write each day once, in"
                    + " order of date",
                "weather/hill.csv:6:1: 'x' is no date; write year-month-day, as 2027-05-10")),
        Arguments.of(
            "weather/hill.csv",
            "date,tmax_c,tmin_c,tmin_f\n2026-05-01,70,8,0\n",
            List.of(
                "weather/hill.csv:1:1: both tmin_f and tmin_c are among the columns; keep one of"
                    + " the two",
                "weather/hill.csv:1:1: neither rain_in nor rain_mm is among the columns; keep one"
                    + " of the two")),
        Arguments.of(
            "scouting.csv",
            "date,field,weed,heigt\n",
            List.of("scouting.csv:1:17: the column 'heigt' is not known; did you mean 'height'?")));
  }

  @ParameterizedTest
  @MethodSource({"fields", "weeds", "journals", "others"})
  void saysWhatIsWrongAndWhere(String file, String text, List<String> problems) {
    assertThat(new BookOnDisk(dir).with(file, text).problems())
        .containsExactlyInAnyOrderElementsOf(problems)
        .isSortedAccordingTo(BookProblemsTest::byPlace);
  }

  private static int byPlace(String a, String b) {
    String[] x = a.split(":");
    String[] y = b.split(":");
    int file = x[0].compareTo(y[0]);
    int line = Integer.compare(Integer.parseInt(x[1]), Integer.parseInt(y[1]));
    int column = Integer.compare(Integer.parseInt(x[2]), Integer.parseInt(y[2]));
    return file != 0 ? file : line != 0 ? line : column;
  }

  private static final String AMAPA_IN_CORN_ONLY =
      """
      format: swathbook.weed/1
      eppo: AMAPA
      name: Palmer amaranth
      latin: Amaranthus palmeri
      kind: broadleaf
      family: amaranthaceae
      genus: amaranthus
      emergence:
        degreeDays: {method: average, base: 48 F, start: Jan 1}
        points: {10 %: 370, 50 %: 1129, 90 %: 2300}
      height: {base: 10 C, slope: 0.2 cm per degree-day, r: 0.03, lag: 90, max: 3 m}
      competition: {corn: {i: 17.8 % per plant/m2, a: 95 %}}
      seed: {emerged: 5 %, survival: 35 %, fecundity: 50000, selfing: 0 %}
      reviewed: 2026-11-01
      """;

  @Test
  void aWeedWhoseCompetitionWithTheCropNobodyKnows() {
    assertThat(
            new BookOnDisk(dir)
                .with("fields.csv", FIELDS + "\n" + FIELD.replace("soybean", "wheat") + "\n")
                .with(
                    "book.yaml",
                    BookOnDisk.soundText("book.yaml")
                        .replace(
                            "  corn:", "  wheat: {price: 6 $/bu, yieldGoal: 60 bu/acre}\n  corn:"))
                .with("catalog/weeds/amapa.yaml", AMAPA_IN_CORN_ONLY)
                .problems())
        .containsExactly(
            "weeds.csv:2:5: the catalog does not say how much yield AMAPA takes from wheat; add"
                + " 'wheat' under competition in its file of the book's catalog folder");
  }

  @Test
  void filesThatMustBeThere() {
    assertThat(new BookOnDisk(dir).without("weeds.csv").without("weather/hill.csv").problems())
        .containsExactly(
            "weather/hill.csv:1:1: the file is missing; write one that starts with"
                + " 'date,tmax_f,tmin_f,rain_in'",
            "weeds.csv:1:1: the file is missing; write one that starts with"
                + " 'field,weed,density,driver'");
    assertThat(new BookOnDisk(dir).without("book.yaml").problems())
        .containsExactly(
            "book.yaml:1:1: the file is missing; write it, or name the folder of a book");
  }

  @Test
  void filesThatMayBeMissingAreNoted() {
    assertThat(new BookOnDisk(dir).without("prices.csv").without("seasons.csv").load().notes())
        .containsExactly(
            "prices.csv is missing: no product has a price.",
            "seasons.csv is missing: what grew in past seasons is not known.");
  }

  private static final String STOCK = "product,amount,grower,goodUntil\n";

  /** What is in the warehouse may stand beside the price or in the table of stock. */
  @Test
  void stockIsOfAGrowerOrOfTheWarehouse() {
    Book book =
        new BookOnDisk(dir)
            .with(
                "fields.csv", FIELDS + ",grower\n" + FIELD + ",Hill Farm\n" + CORN + ",Hill Farm\n")
            .with(
                "stock.csv",
                STOCK + "glyphosate-4.5sl,5 gal,hill farm,2027-12-31\nglyphosate-4.5sl,1 qt,,\n")
            .load();
    assertThat(book.prices().held())
        .extracting(h -> h.amount() + " " + h.grower() + " " + h.goodUntil())
        .containsExactly(
            "5 gal Optional[Hill Farm] Optional[2027-12-31]", "1 qt Optional.empty Optional.empty");
  }

  @Test
  void stockThatCannotBeIsRefused() {
    assertThat(
            new BookOnDisk(dir)
                .with(
                    "fields.csv",
                    FIELDS + ",grower\n" + FIELD + ",Hill Farm\n" + CORN + ",Hill Farm\n")
                .with(
                    "prices.csv",
                    "product,price,package,onHand\nglyphosate-4.5sl,18 $/gal,0 gal,5 gal\n")
                .with(
                    "stock.csv",
                    STOCK
                        + "glyphosate-4.5sl,5 gal,,\n"
                        + "glyphosate-4.5sl,5 gal,Hil Farm,\n"
                        + "glyphosate-4.5sl,5 lb,,\n"
                        + "glyphosate-4.5sl,,Hill Farm,soon\n"
                        + "metribuzin-75wg,5 lb,Hill Farm,\n"
                        + "metribuzin-75wg,5 lb,hill farm,\n")
                .problems())
        .containsExactly(
            "prices.csv:2:27: a package of nothing; write for example '24 gal'",
            "stock.csv:2:1: prices.csv has an amount of glyphosate-4.5sl in the warehouse too; leave"
                + " its onHand blank there, or take this row out",
            "stock.csv:3:24: 'Hil Farm' is no grower of fields.csv; did you mean 'Hill Farm'?",
            "stock.csv:4:18: '5 lb' does not fit glyphosate-4.5sl, a liquid; write for example '24"
                + " gal'",
            "stock.csv:5:18: 'amount' is blank; write for example '24 gal'",
            "stock.csv:5:29: 'soon' is no date; write year-month-day, as 2027-05-10",
            "stock.csv:7:1: metribuzin-75wg of the same place and date stands here already; add the"
                + " amounts up in one row");
  }

  /** A slip in a field's row makes no grower look unknown. */
  @Test
  void growersAreNotHeldToFieldsThatCannotBeRead() {
    assertThat(
            new BookOnDisk(dir)
                .with(
                    "fields.csv",
                    FIELDS + ",grower\n" + FIELD.replace("76", "x") + ",Hill Farm\n" + CORN + ",\n")
                .with("stock.csv", STOCK + "glyphosate-4.5sl,5 gal,Hill Farm,\n")
                .problems())
        .hasSize(1);
  }

  private static final String WATCH = "field,weed,site,since,reason\n";

  /** What is watched strikes the site from the counts and leaves the plants as they are. */
  @Test
  void aWatchedSiteIsListedAndNoPlantsResistIt() {
    List<WeedPressure> plain = new BookOnDisk(dir).load().weeds();
    String weed = plain.get(0).weed().id().value();
    String field = plain.get(0).field().value();
    Book book =
        new BookOnDisk(dir)
            .with(
                "watch.csv",
                WATCH
                    + field
                    + ","
                    + weed
                    + ",15,2027-06-22,seen\n"
                    + field
                    + ","
                    + weed
                    + ",15,,\n")
            .load();
    WeedPressure watched = book.weeds().get(0);
    assertThat(book.notes()).isEmpty();
    assertThat(watched.biotypes()).isEqualTo(plain.get(0).biotypes());
    assertThat(watched.listed()).hasSize(plain.get(0).listed().size() + 1);
    Resistance last = watched.listed().get(watched.listed().size() - 1);
    assertThat(last.isWatched()).isTrue();
    assertThat(last.status()).isEqualTo("watched since 2027-06-22");
    assertThat(plain.get(0).listed()).noneMatch(Resistance::isWatched);
  }

  @Test
  void whatCannotBeWatchedIsSaid() {
    List<WeedPressure> plain = new BookOnDisk(dir).load().weeds();
    String field = plain.get(0).field().value();
    String weed = plain.get(0).weed().id().value();
    assertThat(
            new BookOnDisk(dir)
                .with("watch.csv", WATCH + field + "," + weed + ",,,\n" + field + ",SORVU,2,,\n")
                .load()
                .notes())
        .containsExactly(
            "watch.csv, line 2: nothing follows, since it names no site.",
            "watch.csv, line 3: nothing follows, since weeds.csv has no SORVU on " + field + ".");
    assertThatThrownBy(
            () ->
                new BookOnDisk(dir)
                    .with("watch.csv", WATCH + "no-field," + weed + ",x,yesterday,\n")
                    .load())
        .hasMessageContaining("watch.csv:2:1:")
        .hasMessageContaining("watch.csv:2:16: 'x' is no site of action")
        .hasMessageContaining("'yesterday'");
  }

  @Test
  void aMistakeInAFieldDoesNotMakeOtherTablesLookWrong() {
    assertThat(
            new BookOnDisk(dir)
                .with(
                    "fields.csv", FIELDS + "\n" + FIELD.replace("76", "many") + "\n" + CORN + "\n")
                .problems())
        .containsExactly(
            "fields.csv:2:5: 'many' is no number; write a number as 12.5, without unit");
  }

  @Test
  void norDoesARowOfFieldsThatDoesNotFitItsHeader() {
    assertThat(
            new BookOnDisk(dir)
                .with("fields.csv", FIELDS + "\n" + FIELD + ",x\n" + CORN + "\n")
                .problems())
        .containsExactly(
            "fields.csv:2:40: the row has 7 cells, the header names 6; take the cells too many out,"
                + " or put a text with a comma in quotes");
  }

  @Test
  void aBookThatIsNoFolder() {
    Path nowhere = dir.resolve("nowhere");
    assertThat(catchThrowable(() -> new BookLoader().load(nowhere)))
        .hasMessage(
            nowhere
                + ":1:1: there is no such folder; name the folder of a book, which holds its book.yaml");
  }
}
