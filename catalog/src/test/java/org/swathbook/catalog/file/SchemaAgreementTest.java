package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.source.Problem;
import org.swathbook.source.YamlReader;

/**
 * Holds the schemas and the readers together: a schema refuses nothing that the program takes, and
 * what is wrong in form both refuse.
 */
class SchemaAgreementTest {
  /** Maps whose keys are names: what is not in the catalog, only the program can know. */
  private static final Set<String> NAMED =
      Set.of("rotation", "competition", "at", "bbch", "heights");

  private static final OneEntry READERS = new OneEntry(new CatalogLoader().starter());
  private static final Map<String, JsonNode> FILES = files();

  private static Map<String, JsonNode> files() {
    Map<String, JsonNode> files = new LinkedHashMap<>();
    for (CatalogFile f : CatalogLoader.starterFiles()) {
      if (f.path().endsWith(".yaml")) {
        files.put(f.path(), PlainJson.of(f.keys()));
      }
    }
    return files;
  }

  static Set<String> paths() {
    return FILES.keySet();
  }

  private static JsonSchema schema(String path) {
    String name =
        path.contains("/")
            ? EntryKind.ofFolder(path.substring(0, path.indexOf('/'))).orElseThrow().word()
            : "interactions";
    return SCHEMAS.computeIfAbsent(name, JsonSchema::of);
  }

  private static final Map<String, JsonSchema> SCHEMAS = new LinkedHashMap<>();

  @ParameterizedTest
  @MethodSource("paths")
  void aStarterFileIsValid(String path) {
    assertThat(schema(path).complaints(document(path))).isEmpty();
    assertThat(READERS.problems(path, document(path))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("paths")
  void aMistakeIsJudgedAlike(String path) {
    check(path, 15, 20261101);
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("paths")
  void everyMistakeIsJudgedAlike(String path) {
    check(path, Integer.MAX_VALUE, 1);
  }

  /** Mistakes among the sources need the sources; elsewhere their paths would hide the mistake. */
  private static void check(String path, int most, long seed) {
    ObjectNode plain = document(path).deepCopy();
    plain.remove("sources");
    List<Mutations.Mutant> mutants = new ArrayList<>(Mutations.of(plain, most, seed));
    Mutations.of(document(path), most, seed).stream()
        .filter(m -> m.place().contains("sources"))
        .forEach(mutants::add);
    for (Mutations.Mutant m : mutants) {
      check(path, m);
    }
  }

  private static void check(String path, Mutations.Mutant m) {
    List<Problem> problems = READERS.problems(path, m.document());
    JsonSchema schema = schema(path);
    if (problems.isEmpty()) {
      assertThat(schema.complaints(m.document())).as("taken by the program: %s", m).isEmpty();
      return;
    }
    String last = m.place().isEmpty() ? "" : m.place().get(m.place().size() - 1);
    boolean named = NAMED.contains(last) || last.equals("days");
    boolean ofForm =
        problems.stream()
            .map(Problem::what)
            .anyMatch(
                w ->
                    w.matches("the key '.*' is (missing|not known here)")
                        || w.startsWith("here stands"));
    boolean refused =
        switch (m.kind()) {
          case UNKNOWN_KEY, SCALAR_TO_MAP, LIST_TO_MAP, MAP_TO_LIST -> true;
          default -> ofForm;
        };
    if (refused && !named) {
      assertThat(schema.accepts(m.document())).as("refused for %s: %s", problems, m).isFalse();
    }
  }

  @ParameterizedTest
  @MethodSource("paths")
  void whatIsNoKeyOrOfTheWrongShapeIsTakenByNeither(String path) {
    for (Mutations.Mutant m : Mutations.of(document(path), 25, 7)) {
      switch (m.kind()) {
        case UNKNOWN_KEY, SCALAR_TO_MAP, LIST_TO_MAP, MAP_TO_LIST ->
            assertThat(READERS.problems(path, m.document())).as("%s", m).isNotEmpty();
        default -> {}
      }
    }
  }

  /** Keys of one line in a file that has them otherwise. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{uses: [{crop: corn, position: pre}]}",
        "{site: '04', movement: Systemic, rateBasis: AI}",
        "{aliases: [12, yes]}",
        "{soil: {halfLife: 40 d}}",
        "{reentry: 12h, carrier: {min: 10 GAL/Acre}}",
        "{usesComplete: 'YES', restrictedUse: No}"
      })
  void otherSpellingsThatTheProgramTakesAreValid(String changes) {
    String path = "ingredients/metribuzin.yaml";
    ObjectNode document = document(path).deepCopy();
    document.remove("sources");
    byte[] yaml = changes.getBytes(StandardCharsets.UTF_8);
    PlainJson.of(new YamlReader().readMap(path, yaml))
        .properties()
        .forEach(e -> document.set(e.getKey(), e.getValue()));
    assertThat(READERS.problems(path, document)).isEmpty();
    assertThat(schema(path).complaints(document)).isEmpty();
  }

  private static JsonNode document(String path) {
    JsonNode found = FILES.get(path);
    assertThat(found).as(path).isNotNull();
    return found;
  }

  @Test
  void thereAreFilesOfEveryKind() {
    assertThat(FILES.keySet().stream().map(p -> p.replaceAll("[/.].*", "")).distinct())
        .containsExactlyInAnyOrder("crops", "weeds", "ingredients", "products", "interactions");
  }
}
