package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.WeedKind;

/** The schemas by themselves, beside the words of the code and the keys of the README. */
class SchemasTest {

  @Test
  void everyNameHasAText() {
    assertThat(CatalogSchemas.names())
        .containsExactly("ingredient", "product", "weed", "crop", "interactions", "responses");
    assertThat(CatalogSchemas.names()).allMatch(n -> CatalogSchemas.text(n).isPresent());
    assertThat(CatalogSchemas.fileName("weed")).contains("weed.schema.json");
    assertThat(CatalogSchemas.fileName("responses")).contains("responses.table.json");
    assertThat(CatalogSchemas.text("weeds")).isEmpty();
    assertThat(CatalogSchemas.text("../schema/weed")).isEmpty();
    assertThat(CatalogSchemas.fileName("")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ingredient", "product", "weed", "crop", "interactions"})
  void aSchemaIsOneByItsStandardAndExplainsEveryKey(String name) {
    JsonNode schema = JsonSchema.of(name).text();
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()))
                .validate(schema))
        .isEmpty();
    assertThat(schema.path("$id").asText()).isEqualTo("urn:swathbook:schema:" + name + ":1");
    assertThat(schema.path("title").asText()).isNotBlank();
    List<String> bare = new ArrayList<>();
    walk(
        schema,
        "",
        (place, node) -> {
          if (node.path("properties").isObject() && !place.matches(".*/(if|then)")) {
            node.path("properties")
                .properties()
                .forEach(
                    e -> {
                      if (e.getValue().path("description").asText().isBlank()) {
                        bare.add(place + "/" + e.getKey());
                      }
                    });
            if (!node.has("additionalProperties")) {
              bare.add(place + " takes any key");
            }
          }
        });
    assertThat(bare).isEmpty();
  }

  private interface Visitor {
    void visit(String place, JsonNode node);
  }

  private static void walk(JsonNode node, String place, Visitor visitor) {
    if (node instanceof ObjectNode map) {
      visitor.visit(place, map);
      map.properties().forEach(e -> walk(e.getValue(), place + "/" + e.getKey(), visitor));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(node.get(i), place + "/" + i, visitor);
      }
    }
  }

  static Stream<Arguments> words() {
    String use = "/$defs/";
    return Stream.of(
        arguments("ingredient", use + "position", spelled(Position.values(), Position::spelling)),
        arguments("ingredient", use + "method", spelled(Method.values(), Method::spelling)),
        arguments("ingredient", use + "trait", Trait.NAMES),
        arguments("ingredient", use + "formulation", Formulations.CODES),
        arguments("product", "/properties/formulation", Formulations.CODES),
        arguments(
            "ingredient", use + "adjuvant", spelled(AdjuvantKind.values(), AdjuvantKind::spelling)),
        arguments(
            "ingredient", use + "droplets", spelled(DropletClass.values(), DropletClass::spelling)),
        arguments(
            "ingredient",
            use + "texture",
            Stream.concat(
                    lower(SoilTexture.Group.values()).stream(),
                    spelled(SoilTexture.values(), SoilTexture::spelling).stream())
                .toList()),
        arguments(
            "ingredient",
            use + "cap/properties/per",
            spelled(Cap.CapPeriod.values(), p -> p.spelling().replace(' ', '-'))),
        arguments(
            "ingredient",
            use + "tank/properties/cleanOut/anyOf/1/properties/rinse",
            spelled(TankTerms.Rinse.values(), TankTerms.Rinse::spelling)),
        arguments("ingredient", "/properties/movement", lower(Movement.values())),
        arguments("ingredient", "/properties/rateBasis", List.of("ai", "ae", "cation")),
        arguments("weed", "/properties/kind", lower(WeedKind.values())));
  }

  @ParameterizedTest
  @MethodSource("words")
  void theWordsAreThoseOfTheCode(String name, String place, List<String> code) {
    JsonNode listed = JsonSchema.of(name).text().at(place).path("anyOf").path(0).path("enum");
    assertThat(StreamSupport.stream(listed.spliterator(), false).map(JsonNode::asText))
        .containsExactlyElementsOf(code);
  }

  @Test
  void theKeysOfHarvestsAndWatersAreThoseOfTheCode() {
    JsonNode schema = JsonSchema.of("ingredient").text();
    assertThat(fields(schema.at("/$defs/use/properties/intervals/properties")))
        .containsExactlyElementsOf(lower(Commodity.values()));
    assertThat(fields(schema.at("/$defs/setback/anyOf/1/properties")))
        .containsExactlyElementsOf(TermsReader.WATERS);
  }

  /** Of the README: keys in the examples of YAML and in the first column of its table of uses. */
  @ParameterizedTest
  @CsvSource({
    "ingredient, ## Ingredient, ## Product",
    "product, ## Product, ## Weed",
    "weed, ## Weed, ## Crop",
    "crop, ## Crop, ## Responses",
    "interactions, ## Responses, ## When"
  })
  void everyKeyOfTheReadmeIsInTheSchema(String name, String from, String to) throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    String part = readme.substring(readme.indexOf(from), readme.indexOf(to));
    Set<String> known = new LinkedHashSet<>();
    walk(JsonSchema.of(name).text(), "", (p, n) -> known.addAll(fields(n.path("properties"))));
    Set<String> named = new LinkedHashSet<>();
    Matcher blocks = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(part);
    while (blocks.find()) {
      String text = blocks.group(1).replaceAll("(?m)(^| )#.*$|\".*?\"", "");
      Matcher keys = Pattern.compile("(?<![\\w-])(?<!\\d )([a-z]+[A-Za-z]*):").matcher(text);
      while (keys.find()) {
        named.add(keys.group(1));
      }
    }
    Matcher rows = Pattern.compile("(?m)^\\| (`.*?) \\|").matcher(part);
    while (rows.find()) {
      Matcher keys = Pattern.compile("`(\\w+)`").matcher(rows.group(1));
      while (keys.find()) {
        named.add(keys.group(1));
      }
    }
    // Names of crops are no keys of a format.
    named.removeAll(Set.of("corn", "soybean", "sorghum"));
    assertThat(named).hasSizeGreaterThan(7);
    assertThat(known).containsAll(named);
  }

  @Test
  void theColumnsOfResponsesAreThoseOfTheReader() {
    JsonNode table = JsonSchema.of("responses").text();
    List<String> names = new ArrayList<>();
    List<String> needed = new ArrayList<>();
    for (JsonNode field : table.path("fields")) {
      names.add(field.path("name").asText());
      assertThat(field.path("description").asText()).isNotBlank();
      if (field.at("/constraints/required").asBoolean()) {
        needed.add(field.path("name").asText());
      }
    }
    assertThat(names).containsExactlyElementsOf(ResponseReader.COLUMNS.required());
    assertThat(ResponseReader.COLUMNS.optional()).isEmpty();
    names.removeAll(needed);
    assertThat(names).containsExactly("controlHeightIn", "source");
  }

  private static List<String> fields(JsonNode map) {
    List<String> names = new ArrayList<>();
    map.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static <T> List<String> spelled(T[] values, Function<T, String> by) {
    return Arrays.stream(values).map(by).toList();
  }

  private static List<String> lower(Enum<?>[] values) {
    return Arrays.stream(values).map(v -> v.name().toLowerCase(Locale.ROOT)).toList();
  }
}
