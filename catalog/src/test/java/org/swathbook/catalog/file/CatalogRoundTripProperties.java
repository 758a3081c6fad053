package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.MapNode;
import org.swathbook.source.YamlReader;

/** A catalog that is written and read again is the one that it was, and is written the same. */
class CatalogRoundTripProperties {
  private static final Map<String, JsonSchema> SCHEMAS = new ConcurrentHashMap<>();

  @Property
  void aCatalogReadsBackTheSame(@ForAll("catalogs") Catalog catalog) {
    Map<String, String> files = CatalogWriter.write(catalog);
    Catalog read = WrittenFiles.read(files, false);
    WrittenFiles.assertSame(read, catalog);
    Map<String, String> again = CatalogWriter.write(read);
    assertThat(again.keySet()).isEqualTo(files.keySet());
    again.forEach((path, text) -> assertThat(text).as(path).isEqualTo(files.get(path)));
  }

  /** The same of a catalog that is kept made, as the build keeps the starter. */
  @Property
  void aMadeCatalogReadsBackTheSame(@ForAll("catalogs") Catalog catalog) {
    byte[] made = MadeStarter.write(catalog);
    Catalog read = MadeStarter.read(made);
    WrittenFiles.assertSame(read, catalog);
    assertThat(CatalogWriter.write(read)).isEqualTo(CatalogWriter.write(catalog));
    assertThat(MadeStarter.write(read)).isEqualTo(made);
  }

  @Tag("slow")
  @Property(tries = 3000)
  void manyCatalogsReadBackTheSame(@ForAll("catalogs") Catalog catalog) {
    aCatalogReadsBackTheSame(catalog);
  }

  /** What the loader takes, an editor with the schemas takes, however it reads plain scalars. */
  @Property(tries = 60)
  void schemasTakeWhatIsWritten(@ForAll("catalogs") Catalog catalog) {
    CatalogWriter.write(catalog)
        .forEach(
            (path, text) -> {
              if (path.endsWith(".yaml")) {
                MapNode keys =
                    new YamlReader().readMap(path, text.getBytes(StandardCharsets.UTF_8));
                assertThat(schema(path).complaints(PlainJson.of(keys))).as(text).isEmpty();
              }
            });
  }

  private static JsonSchema schema(String path) {
    return SCHEMAS.computeIfAbsent(
        path.contains("/")
            ? EntryKind.ofFolder(path.substring(0, path.indexOf('/'))).orElseThrow().word()
            : "interactions",
        JsonSchema::of);
  }

  @Provide
  Arbitrary<Catalog> catalogs() {
    return CatalogArbitraries.catalogs();
  }
}
