package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.html.CompareHtml;
import org.swathbook.cli.html.HandoutHtml;
import org.swathbook.cli.html.OrderHtml;
import org.swathbook.cli.html.PlanHtml;
import org.swathbook.cli.json.CompareJson;
import org.swathbook.cli.json.OrderJson;
import org.swathbook.cli.json.PlanJson;
import org.swathbook.cli.report.ComparedField;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;

/** Figures of a page are those of the JSON document of the same command, and none is left out. */
class PageFiguresTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static final Book BOOK = Samples.book();
  private static final ReportHead HEAD = ReportHead.of(BOOK, BOOK.fields(), Samples.TODAY);
  private static final List<PlannedField> PLANS =
      List.of(
          SamplePlans.recommended(),
          SamplePlans.notRecommended(),
          SamplePlans.refused(),
          SamplePlans.asked());

  @TempDir Path folder;

  private JsonNode json() throws IOException {
    return MAPPER.readTree(PlanJson.of(BOOK, HEAD, PLANS));
  }

  @Test
  void aPlan() throws IOException {
    String page = PlanHtml.of(BOOK, HEAD, PLANS, Map.of(Samples.field().id(), Samples.calendar()));
    JsonNode json = json();
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    Set<String> numbers = new TreeSet<>();
    for (int f = 0; f < json.get("fields").size(); f++) {
      String field = "/fields/" + f;
      for (int p = 0; p < json.at(field + "/programs").size(); p++) {
        String program = field + "/programs/" + p;
        numbers.addAll(
            List.of(program + "/costPerAcre", program + "/lossPerAcre", program + "/netPerAcre"));
      }
      numbers(json.at(field + "/programs/0"), field + "/programs/0", numbers);
      numbers(json.at(field + "/without"), field + "/without", numbers);
    }
    numbers.removeIf(n -> isSilent(json, n));
    assertThat(left(numbers, compared)).as("numbers that the page is without").isEmpty();
    assertThat(bare(page)).as("figures in tables that name no value").isEmpty();
    // The years and the calendar of a program stand in the document of 'season' alone.
    assertThat(PageFigures.bareInPictures(page))
        .as("figures in pictures that name no value")
        .allMatch(b -> b.matches("year: .*|share: .*|week from .*|.* of 3 years|20\\d\\d, .*"));
  }

  /**
   * Numbers of a program that its page does not print: those behind counts of sites, of weeds that
   * decide nothing, of years, the number of a pass in a title; what a finding says is in its words.
   */
  private static final String NOT_SHOWN =
      ".*/(foliarSiteControl|soilSiteControl|about|missedYears|plantsPerM2|gallonsPerAcre"
          + "|worstFifthExposedEmergencePct|emergenceMetByNothingPct|yearsWithLayer)\\b.*"
          + "|.*/(passes|without)/\\d+/pass|.*/layers/\\w+/years"
          + "|.*/(foliarSites|soilSites|weedHeightIn|layers)/(?!AMAPA\\b).*";

  private static void numbers(JsonNode node, String at, Set<String> out) {
    if (node.isNumber()) {
      out.add(at);
    }
    node.properties().forEach(e -> numbers(e.getValue(), at + "/" + e.getKey(), out));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      numbers(node.get(i), at + "/" + i, out);
    }
  }

  /** What is null, sites on plants that do not stand, and a day that is planting itself. */
  private static boolean isSilent(JsonNode json, String at) {
    return json.at(at).isNull()
        || at.matches(NOT_SHOWN)
        || (at.matches(".*/foliarSites/\\w+")
            && json.at(at.replaceAll("foliarSites", "weedHeightIn")).isMissingNode())
        || (at.endsWith("/daysAfterPlanting") && json.at(at).asInt() == 0);
  }

  private static Set<String> left(Set<String> numbers, PageFigures.Compared compared) {
    Set<String> out = new TreeSet<>(numbers);
    out.removeAll(compared.shown());
    return out;
  }

  private static final Pattern BARE =
      Pattern.compile(
          "<(td|dd)((?! data-json)[^<>])*>[^<]*(?<![\\w.-])\\d+\\.\\d+(?![-\\w])[^<]*<");

  /**
   * Cells with a decimal figure and no pointer, but for densities of weeds, which are the book's.
   */
  private static Set<String> bare(String page) {
    Set<String> out = new TreeSet<>();
    for (Matcher m = BARE.matcher(page); m.find(); ) {
      if (!m.group().contains("data-name=\"density\"") && !isByYear(page, m.start())) {
        out.add(m.group());
      }
    }
    return out;
  }

  /** The years of a plan's first program stand in the document of {@code season} alone. */
  private static boolean isByYear(String page, int at) {
    String head = page.substring(0, page.lastIndexOf("</thead>", at));
    return head.strip().endsWith(">loss, $/acre</th>\n</tr>");
  }

  @Test
  void theGrowersCopy() throws IOException {
    String page = HandoutHtml.of(BOOK, HEAD, PLANS, Map.of(), Map.of());
    PageFigures.Compared compared = PageFigures.of(page, json());
    assertThat(compared.wrong()).isEmpty();
    assertThat(compared.shown())
        .contains(
            "/fields/0/programs/0/passes/0/date",
            "/fields/0/programs/0/passes/0/mix/0/rate",
            "/fields/0/programs/0/costPerAcre",
            "/fields/0/programs/0/worstYearLossPerAcre",
            "/growers/0/order/0/needed",
            "/growers/0/cost");
    assertThat(bare(page)).isEmpty();
  }

  @Test
  void programsCompared() throws IOException {
    ComparedField compared = SamplePlans.compared();
    String page = CompareHtml.of(BOOK, HEAD, compared);
    WrittenPage.standsByItself(page);
    JsonNode json = MAPPER.readTree(CompareJson.of(BOOK, HEAD, compared));
    PageFigures.Compared figures = PageFigures.of(page, json);
    assertThat(figures.wrong()).isEmpty();
    for (int i = 0; i < compared.programs().size(); i++) {
      String at = "/fields/0/compare/" + i;
      assertThat(figures.shown())
          .contains(
              at + "/costPerAcre",
              at + "/lossPerAcre",
              at + "/worstYearLossPerAcre",
              at + "/netPerAcre",
              at + "/worstYearNetPerAcre",
              at + "/controlPct/AMAPA",
              at + "/worstYearControlPct/AMAPA",
              at + "/survivorsPerAcre/AMAPA/all",
              at + "/exposedEmergencePct/AMAPA",
              at + "/windowConfidencePct");
    }
    assertThat(figures.shown()).contains("/fields/0/compare/1/givesUp");
    assertThat(bare(page)).isEmpty();
  }

  @Test
  void anOrder() throws IOException {
    OrderReport report = SampleOrder.report(BOOK);
    String page = OrderHtml.of(BOOK, HEAD, report);
    WrittenPage.standsByItself(page);
    JsonNode json = MAPPER.readTree(OrderJson.of(BOOK, HEAD, report));
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    Set<String> numbers = new TreeSet<>();
    numbers(json.get("lines"), "/lines", numbers);
    numbers(json.get("adjuvants"), "/adjuvants", numbers);
    numbers(json.get("substitutes"), "/substitutes", numbers);
    numbers.add("/totals/0/cost");
    numbers.add("/totals/0/productsPerAcre");
    numbers.removeIf(
        n ->
            n.matches(
                ".*/(pricePerUnit|leftOverWorth|packageSize|about|controlPct/(?!AMAPA)).*"
                    + "|/substitutes/\\d+/pass"));
    assertThat(left(numbers, compared)).as("numbers that the page is without").isEmpty();
    assertThat(WrittenPage.words(page))
        .contains("On hand, but too old", "in the place of", "ND-2: no program in the book");
    assertThat(bare(page)).isEmpty();
  }

  /** What several growers buy stands once for each and once for all together. */
  @Test
  void theOrderOfTwoGrowers() throws IOException {
    OrderedField one = SampleOrder.report(BOOK).fields().get(0);
    Field other = Samples.fieldOf("Another Farm");
    OrderReport report =
        OrderReport.of(
            BOOK.prices(),
            List.of(
                one,
                new OrderedField(other, one.program(), one.judgement(), one.outcome(), List.of())),
            List.of(),
            false,
            Samples.TODAY);
    String page = OrderHtml.of(BOOK, HEAD, report);
    JsonNode json = MAPPER.readTree(OrderJson.of(BOOK, HEAD, report));
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    assertThat(compared.shown())
        .contains("/pooled/0/needed", "/totals/0/cost", "/totals/1/cost", "/totals/2/cost");
    assertThat(WrittenPage.words(page))
        .contains("Another Farm", "All together, bought as one order");
  }

  @Test
  void aSeason() throws IOException {
    Path file = folder.resolve("season.html");
    Called.with("season", DEMO, "nd-1-two-layers", "--html", file.toString());
    String page = Files.readString(file);
    JsonNode json = MAPPER.readTree(Called.with("season", DEMO, "nd-1-two-layers", "--json").out());
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    Set<String> numbers = new TreeSet<>();
    numbers(json.get("summary"), "/summary", numbers);
    for (int y = 0; y < json.get("years").size(); y++) {
      String year = "/years/" + y;
      numbers.add(year + "/year");
      numbers.add(year + "/lossPerAcre");
      numbers(json.at(year + "/controlPct"), year + "/controlPct", numbers);
      numbers.add(year + "/exposedPct/AMAPA");
    }
    numbers.removeIf(n -> isSilent(json, n));
    assertThat(left(numbers, compared)).as("numbers that the page is without").isEmpty();
    assertThat(PageFigures.bareInPictures(page)).isEmpty();
    assertThat(compared.shown())
        .contains(
            "/years/0/gaps/0/emergencePct",
            "/calendar/emergence/0/weeks/36/meanPct",
            "/calendar/windows/0/open/0/years");
  }

  @Test
  void aLookAfterAPass() throws IOException {
    Path file = folder.resolve("escapes.html");
    Called.with("escapes", DEMO, "nd-1-june", "--html", file.toString());
    String page = Files.readString(file);
    JsonNode json = MAPPER.readTree(Called.with("escapes", DEMO, "nd-1-june", "--json").out());
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    assertThat(compared.shown()).contains("/weeds/0/reading/dead", "/weeds/0/reading/undecided");
    assertThat(PageFigures.bareInPictures(page)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--planned nd-1-two-layers --season 2026 /planned",
        "--what-if posts-by:V3 --what-if second-foliar-site /whatIf"
      })
  void whatAnAuditCompares(String asked) throws IOException {
    List<String> call = new ArrayList<>(List.of(asked.split(" ")));
    String root = call.remove(call.size() - 1);
    Path file = folder.resolve("compared.html");
    List<String> withPage = new ArrayList<>(call);
    withPage.addAll(List.of("--html", file.toString()));
    Called.with("audit", DEMO, withPage.toArray(String[]::new));
    String page = Files.readString(file);
    WrittenPage.standsByItself(page);
    call.add("--json");
    JsonNode json = MAPPER.readTree(Called.with("audit", DEMO, call.toArray(String[]::new)).out());
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    Set<String> numbers = new TreeSet<>();
    numbers(json.at(root), root, numbers);
    // Fields not tried stand below; a pass on time needs no days.
    numbers.removeIf(n -> n.endsWith("/fieldsNotTried") || json.at(n).asText().equals("0"));
    assertThat(left(numbers, compared)).as("numbers that the page is without").isEmpty();
  }

  @Test
  void anAudit() throws IOException {
    Path file = folder.resolve("audit.html");
    Called.with("audit", DEMO, "--html", file.toString());
    String page = Files.readString(file);
    JsonNode json = MAPPER.readTree(Called.with("audit", DEMO, "--json").out());
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    Set<String> numbers = new TreeSet<>();
    numbers(json, "", numbers);
    numbers.removeIf(n -> !n.matches("/(fields|growers|acres).*") || n.matches(AUDIT_NOT_SHOWN));
    assertThat(left(numbers, compared)).as("numbers that the page is without").isEmpty();
    for (int i = 0; i < json.get("findings").size(); i++) {
      assertThat(compared.shown()).contains("/findings/" + i + "/message");
    }
    assertThat(bare(page)).isEmpty();
    assertThat(PageFigures.bareInPictures(page)).isEmpty();
    assertThat(compared.shown()).contains("/fields/0/rank");
  }

  /** The page has the order 1 number, shares of fewer than two, and the weakest site in words. */
  private static final String AUDIT_NOT_SHOWN =
      ".*/(rank|effectiveSiteNumberSimpson|foliarSitesPerPass|soilSitesPerPass"
          + "|singleSiteExposedPct|twoOrMore|weakestSite|dominantShare)\\b.*";

  /** A figure of a picture that is another than the document's, one picture after the other. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "season nd-1-two-layers /years/2/exposedPct/AMAPA",
        "season nd-1-two-layers /summary/passes/1/weedHeightIn/AMAPA/p90",
        "season nd-1-two-layers /years/0/gaps/0/emergencePct",
        "audit - /fields/0/season",
        "audit - /fields/1/emergenceMetPct/none+/fields/1/emergenceMetPct/one",
        "escapes nd-1-june /weeds/0/reading/undecided"
      })
  void aWrongFigureOfAPictureIsSeen(String where) throws IOException {
    String[] call = where.split(" ");
    String[] what = call[1].equals("-") ? new String[] {} : new String[] {call[1]};
    Path file = folder.resolve("picture.html");
    String[] withPage = Arrays.copyOf(what, what.length + 2);
    withPage[what.length] = "--html";
    withPage[what.length + 1] = file.toString();
    Called.with(call[0], DEMO, withPage);
    String[] withJson = Arrays.copyOf(what, what.length + 1);
    withJson[what.length] = "--json";
    JsonNode json = MAPPER.readTree(Called.with(call[0], DEMO, withJson).out());
    Matcher label =
        Pattern.compile("(<text [^>]*data-json=\"" + Pattern.quote(call[2]) + "\">\\D*)(\\d)")
            .matcher(Files.readString(file));
    assertThat(label.find()).isTrue();
    String other = Integer.toString((Integer.parseInt(label.group(2)) + 1) % 10);
    String wrong = label.replaceFirst("$1" + other);
    assertThat(PageFigures.of(wrong, json).wrong()).isNotEmpty();
  }

  /** The tip of a disc of 'what more money buys'. */
  @Test
  void aWrongFigureOfWhatMoneyBuysIsSeen() throws IOException {
    List<PlannedField> one = List.of(SamplePlans.withFront());
    String page = PlanHtml.of(BOOK, HEAD, one, Map.of());
    JsonNode json = MAPPER.readTree(PlanJson.of(BOOK, HEAD, one));
    PageFigures.Compared compared = PageFigures.of(page, json);
    assertThat(compared.wrong()).isEmpty();
    assertThat(PageFigures.bareInPictures(page)).isEmpty();
    Set<String> numbers = new TreeSet<>();
    numbers(json.at("/fields/0/front"), "/fields/0/front", numbers);
    assertThat(left(numbers, compared)).isEmpty();
    assertThat(page.split("<circle [^>]*r=\"7.5\"", -1).length - 1)
        .as("discs with a number, on the wide and on the narrow picture; two overlap")
        .isEqualTo(2 * 3);
    String tip = "data-json=\"/fields/0/front/0/costPerAcre [^>]*>cost ";
    assertThat(PageFigures.of(page.replaceFirst("(" + tip + ")", "$1" + "9"), json).wrong())
        .isNotEmpty()
        .allSatisfy(w -> assertThat(w).contains("is not /fields/0/front/0/costPerAcre"));
  }

  /** What the comparison is for: a figure that is wrong, and one that is not there. */
  @Test
  void aWrongFigureAndAMissingOneAreSeen() throws IOException {
    String page = PlanHtml.of(BOOK, HEAD, PLANS, Map.of());
    JsonNode json = json();
    String cost = json.at("/fields/0/programs/0/costPerAcre").asText();
    String cell = "data-json=\"/fields/0/programs/0/costPerAcre\">" + cost;
    assertThat(page).contains(cell);
    String near = new BigDecimal(cost).add(new BigDecimal("0.01")).toString();
    assertThat(
            PageFigures.of(page.replace(cell, cell.replace(">" + cost, ">" + near)), json).wrong())
        .isNotEmpty()
        .allMatch(w -> w.contains(near));
    assertThat(PageFigures.of(page.replace(cell, cell.replace(">" + cost, ">")), json).wrong())
        .isNotEmpty()
        .allMatch(w -> w.contains("0 figures"));
  }
}
