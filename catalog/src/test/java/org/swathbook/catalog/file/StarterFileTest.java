package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.Problems;

/** The starter that the build parsed is the starter that people write. */
class StarterFileTest {
  private static final Path WRITTEN = Path.of("src/main/resources/org/swathbook/catalog/starter");

  private final List<CatalogFile> written = StarterBuild.files(WRITTEN);
  private final List<CatalogFile> parsed = CatalogLoader.starterFiles();

  @Test
  void everyFileIsThere() {
    assertThat(parsed.stream().map(CatalogFile::path))
        .containsExactlyElementsOf(written.stream().map(CatalogFile::path).toList());
  }

  /** Keys, values, quotes and places, to the last one. */
  @Test
  void everyFileHoldsTheSame() {
    for (int i = 0; i < written.size(); i++) {
      CatalogFile a = written.get(i);
      CatalogFile b = parsed.get(i);
      assertThat(b.shown()).isEqualTo(a.shown());
      if (a.path().equals(CatalogPaths.RESPONSES)) {
        assertThat(b.content()).isEqualTo(a.content());
      } else {
        assertThat(b.keys()).isEqualTo(a.keys());
      }
    }
  }

  @Test
  void theyMakeTheSameCatalog() {
    Catalog a = CatalogAssembler.assemble(written, new Problems());
    Catalog b = CatalogAssembler.assemble(parsed, new Problems());
    assertThat(b.ingredients()).containsExactlyElementsOf(a.ingredients());
    assertThat(b.products()).containsExactlyElementsOf(a.products());
    assertThat(b.weeds()).containsExactlyElementsOf(a.weeds());
    assertThat(b.crops()).containsExactlyElementsOf(a.crops());
    assertThat(b.responses()).containsExactlyElementsOf(a.responses());
    assertThat(b.interactions()).isEqualTo(a.interactions());
  }

  @Test
  void theSameFolderGivesTheSameBytes() {
    assertThat(new StarterFile().write(StarterBuild.files(WRITTEN)))
        .isEqualTo(new StarterFile().write(written));
  }
}
