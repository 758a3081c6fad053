package org.swathbook.catalog.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.stream.Stream;

/** A schema of the program with a validator of JSON Schema, draft 2020-12. */
final class JsonSchema {
  private final JsonNode text;
  private final Schema schema;

  JsonSchema(String text) {
    try {
      this.text = new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(this.text);
  }

  static JsonSchema of(String name) {
    return new JsonSchema(CatalogSchemas.text(name).orElseThrow());
  }

  JsonNode text() {
    return text;
  }

  /** What is wrong with a document of text alone in any reading; nothing when all are accepted. */
  List<String> complaints(JsonNode document) {
    return Stream.of(PlainJson.Reading.values())
        .flatMap(
            r ->
                schema.validate(PlainJson.read(document, r)).stream()
                    .map(e -> r + " " + e.getInstanceLocation() + ": " + e.getMessage()))
        .toList();
  }

  /** Whether a document of text alone is accepted as this program reads it. */
  boolean accepts(JsonNode document) {
    return schema.validate(document).isEmpty();
  }
}
