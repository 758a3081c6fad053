package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Files as a keeper might write them, each laid over a small sound catalog, with all that is to be
 * said of them word for word.
 *
 * <p>{@code ingredients/atrazine--bare-oz.yaml} is read as {@code ingredients/atrazine.yaml}. What
 * is expected stands in comments on top, {@code # expect: LINE:COLUMN: WHAT; WHAT WOULD BE RIGHT},
 * or, where a file has no room for comments, beside it in a file that ends in {@code .expected}. A
 * problem of another file is expected with its path.
 */
class BadFilesTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "bad");
  private static final String EXPECT = "# expect: ";

  static List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(FOLDER)) {
      return all.filter(Files::isRegularFile)
          .map(p -> FOLDER.relativize(p).toString().replace('\\', '/'))
          .filter(p -> !p.endsWith(".expected"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everythingIsSaidOfABadFile(String file) throws IOException {
    byte[] content = Files.readAllBytes(FOLDER.resolve(file));
    String path = file.replaceAll("--[^.]*(\\.\\w+)$", "$1");
    List<CatalogFile> files = new ArrayList<>();
    SmallCatalog small = new SmallCatalog();
    for (String p : SmallCatalog.PATHS) {
      if (!p.equals(path)) {
        byte[] text = small.text(p).getBytes(StandardCharsets.UTF_8);
        files.add(CatalogFile.of(p, p, false, text));
      }
    }
    files.add(CatalogFile.of(path, path, false, content));
    assertThat(problems(files)).isEqualTo(String.join("\n", expected(file, path, content)));
  }

  private static String problems(List<CatalogFile> files) {
    try {
      CatalogAssembler.assemble(files, new Problems());
      return "";
    } catch (ProblemsException e) {
      return e.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }
  }

  private static List<String> expected(String file, String path, byte[] content)
      throws IOException {
    Path beside = FOLDER.resolve(file + ".expected");
    List<String> lines =
        Files.exists(beside)
            ? Files.readAllLines(beside)
            : new String(content, StandardCharsets.UTF_8)
                .lines()
                .takeWhile(l -> l.startsWith(EXPECT))
                .map(l -> l.substring(EXPECT.length()))
                .toList();
    assertThat(lines).as("what is expected of %s", file).isNotEmpty();
    return lines.stream().map(l -> Character.isDigit(l.charAt(0)) ? path + ":" + l : l).toList();
  }

  @Test
  void thereAreBadFilesOfEveryKind() throws IOException {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(60);
    assertThat(files().stream().map(f -> f.replaceAll("(/|--|\\.).*", "")).distinct())
        .containsExactlyInAnyOrder(
            "crops", "weeds", "ingredients", "products", "responses", "interactions");
  }
}
