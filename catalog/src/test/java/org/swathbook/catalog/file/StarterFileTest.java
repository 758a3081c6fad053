package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.source.Problems;

/** The starter that the build parsed and made is the starter that people write. */
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
    WrittenFiles.assertSame(CatalogAssembler.assemble(parsed, new Problems()), a);
  }

  /** To the last value and source, and written out again to the last byte. */
  @Test
  void theOneThatTheBuildMadeIsTheSameCatalog() {
    Catalog a = CatalogAssembler.assemble(written, new Problems());
    Catalog b = new CatalogLoader().starter();
    WrittenFiles.assertSame(b, a);
    assertThat(CatalogWriter.write(b)).isEqualTo(CatalogWriter.write(a));
    assertThat(MadeStarter.write(b)).isEqualTo(MadeStarter.write(a));
  }

  @Test
  void theSameFolderGivesTheSameBytes() {
    assertThat(new StarterFile().write(StarterBuild.files(WRITTEN)))
        .isEqualTo(new StarterFile().write(written));
  }
}
