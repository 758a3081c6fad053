package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.Book;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.DropletClass;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.YamlReader;
import org.swathbook.testing.DemoBook;

/** The descriptions of a book's files, held against the files and against what reads them. */
class SchemasTest {
  private static final Book BOOK = DemoBook.BOOK;

  @Test
  void everyNameHasAText() {
    assertThat(BookSchemas.names())
        .containsExactly(
            "book",
            "program",
            "mix",
            "observation",
            "fields",
            "weeds",
            "applications",
            "prices",
            "seasons",
            "scouting",
            "watch",
            "stock");
    assertThat(BookSchemas.names()).allMatch(n -> BookSchemas.text(n).isPresent());
    assertThat(BookSchemas.fileName("mix")).contains("mix.schema.json");
    assertThat(BookSchemas.fileName("watch")).contains("watch.table.json");
    assertThat(BookSchemas.text("ingredient")).isEmpty();
    assertThat(BookSchemas.text("")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"book", "program", "mix", "observation"})
  void aSchemaExplainsEveryKey(String name) {
    assertThat(json(name).path("$id").asText()).isEqualTo("urn:swathbook:schema:" + name + ":1");
    List<String> bare = new ArrayList<>();
    explained(json(name), "", bare);
    assertThat(bare).isEmpty();
  }

  private static void explained(JsonNode node, String place, List<String> bare) {
    JsonNode keys = node.path("properties");
    for (var e : keys.properties()) {
      if (e.getValue().path("description").asText().isBlank()) {
        bare.add(place + "." + e.getKey());
      }
    }
    if (keys.isObject() && !node.has("additionalProperties")) {
      bare.add(place + " takes any key");
    }
    for (var e : node.properties()) {
      explained(e.getValue(), place + "." + e.getKey(), bare);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      explained(node.get(i), place + "." + i, bare);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "book, book.yaml",
    "program, programs/nd-1-two-layers.yaml",
    "mix, mixes/nd-1-june.yaml",
    "observation, observations/nd-1-june.yaml"
  })
  void theDemoFileIsValid(String name, String file) {
    JsonNode document = document(bytes(file));
    assertThat(schema(name).validate(document)).isEmpty();
    assertThat(schema(name).validate(JsonMistakes.typed(document))).isEmpty();
  }

  /** A schema refuses nothing that the program takes; what is wrong in form both refuse. */
  @ParameterizedTest
  @CsvSource({"book, book.yaml", "program, programs/nd-1-two-layers.yaml"})
  void aMistakeIsJudgedAlike(String name, String file) {
    Schema schema = schema(name);
    Map<String, JsonNode> mistakes = JsonMistakes.in(document(bytes(file)));
    assertThat(mistakes).hasSizeGreaterThan(100);
    mistakes.forEach(
        (mistake, document) -> {
          List<Problem> problems = problems(name, document);
          if (problems.isEmpty()) {
            assertThat(schema.validate(document)).as(mistake).isEmpty();
            assertThat(schema.validate(JsonMistakes.typed(document))).as(mistake).isEmpty();
            return;
          }
          boolean ofForm =
              problems.stream()
                  .map(Problem::what)
                  .anyMatch(
                      w ->
                          w.matches("the key '.*' is (missing|not known here)")
                              || w.startsWith("here stands"));
          if (ofForm) {
            assertThat(schema.validate(document)).as(mistake + " " + problems).isNotEmpty();
          }
        });
    mistakes.entrySet().stream()
        .filter(e -> e.getKey().matches("unknown key .*|value to map .*|list to map .*"))
        .forEach(e -> assertThat(problems(name, e.getValue())).as(e.getKey()).isNotEmpty());
  }

  @Test
  void blankBlocksOfABookAreValid() {
    ObjectNode document = (ObjectNode) document(bytes("book.yaml"));
    document.put("crops", "").put("houseRules", "");
    assertThat(schema("book").validate(document)).isEmpty();
    document.putNull("crops").putNull("houseRules");
    assertThat(schema("book").validate(document)).isEmpty();
  }

  private static List<Problem> problems(String name, JsonNode document) {
    byte[] content = document.toString().getBytes(StandardCharsets.UTF_8);
    Problems problems = new Problems();
    try {
      if (name.equals("program")) {
        ProgramReader.read(name, content, BOOK);
      } else {
        BookYaml yaml = BookYamlReader.read(new YamlReader().readMap(name, content), problems);
        Names names = new Names(BOOK.catalog());
        BookYamlReader.crops(yaml, names, problems);
        new HouseRulesReader(names, problems).read(yaml.houseRules());
      }
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
    }
    return problems.sorted();
  }

  @ParameterizedTest
  @ValueSource(strings = {"program", "mix"})
  void theWordsAreThoseOfTheCode(String name) {
    assertThat(listed(json(name).at("/$defs/adjuvant/properties/kind")))
        .containsExactlyElementsOf(
            Arrays.stream(AdjuvantKind.values()).map(AdjuvantKind::spelling).toList());
    if (name.equals("mix")) {
      assertThat(listed(json(name).at("/properties/application/properties/droplets")))
          .containsExactlyElementsOf(
              Arrays.stream(DropletClass.values()).map(DropletClass::spelling).toList());
      assertThat(listed(json(name).at("/properties/weather/properties/windFrom")))
          .containsExactlyElementsOf(Parsers.COMPASS);
    }
  }

  private static List<String> listed(JsonNode words) {
    List<String> out = new ArrayList<>();
    words.path("anyOf").path(0).path("enum").forEach(w -> out.add(w.asText()));
    return out;
  }

  static Stream<Arguments> tables() {
    return Stream.of(
        Arguments.of("fields", FieldsReader.TABLE.columns(), List.of()),
        Arguments.of("weeds", WeedsReader.TABLE.columns(), List.of("density", "driver")),
        Arguments.of(
            "applications",
            ApplicationsReader.TABLE.columns(),
            List.of("date", "field", "season", "product", "unit")),
        Arguments.of("prices", PricesReader.TABLE.columns(), List.of()),
        Arguments.of("seasons", SeasonsReader.TABLE.columns(), List.of()),
        Arguments.of("scouting", ScoutingReader.TABLE.columns(), List.of()),
        Arguments.of("watch", WatchReader.TABLE.columns(), List.of()),
        Arguments.of("stock", StockReader.TABLE.columns(), List.of()));
  }

  /** Columns that must be there have filled cells, except where rows lean on other rows. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("tables")
  void theColumnsAreThoseOfTheReader(String name, CsvColumns columns, List<String> mayBeBlank) {
    List<String> names = new ArrayList<>();
    List<String> filled = new ArrayList<>(mayBeBlank);
    for (JsonNode field : json(name).path("fields")) {
      names.add(field.path("name").asText());
      assertThat(field.path("description").asText()).isNotBlank();
      if (field.at("/constraints/required").asBoolean()) {
        filled.add(field.path("name").asText());
      }
    }
    List<String> all = new ArrayList<>(columns.required());
    all.addAll(columns.optional());
    assertThat(names).containsExactlyInAnyOrderElementsOf(all);
    assertThat(filled).containsExactlyInAnyOrderElementsOf(columns.required());
  }

  /** Keys and columns that the README's table of files lists by name. */
  @Test
  void everyKeyOfTheReadmeIsDescribed() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    for (String name : List.of("book", "fields", "weeds", "applications", "seasons", "prices")) {
      Matcher row =
          Pattern.compile("(?m)^\\| (?:\\*\\*)?`" + name + "\\.\\w+`(?:\\*\\*)? \\| (.*) \\|$")
              .matcher(readme);
      assertThat(row.find()).as(name).isTrue();
      String keys = row.group(1).replaceAll("`[^`]*`|\\([^)]*\\)|\\*\\*", "").split(":")[0];
      List<String> known = new ArrayList<>();
      json(name).path("properties").fieldNames().forEachRemaining(known::add);
      json(name).path("fields").forEach(f -> known.add(f.path("name").asText()));
      List<String> named =
          Arrays.stream(keys.split(",")).map(String::strip).filter(k -> !k.isEmpty()).toList();
      assertThat(named).as(name).hasSizeGreaterThan(3);
      assertThat(known).as(name).containsAll(named);
    }
  }

  private static JsonNode json(String name) {
    try {
      return new ObjectMapper().readTree(BookSchemas.text(name).orElseThrow());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Schema schema(String name) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(json(name));
  }

  private static Path demo(String file) {
    return DemoBookTest.FOLDER.resolve(file);
  }

  private static byte[] bytes(String file) {
    return BookFiles.bytes(demo(file), file);
  }

  private static JsonNode document(byte[] content) {
    return JsonMistakes.of(new YamlReader().readMap("file", content));
  }
}
