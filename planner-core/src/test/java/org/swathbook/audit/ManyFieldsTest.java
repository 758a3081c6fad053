package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;
import org.swathbook.testing.DemoBook;

/** Outdoors that fields share change no figure of any of them. */
class ManyFieldsTest {
  private static final Path DEMO = Path.of("../demo-data");

  @Test
  void everyCopyHasTheFiguresOfItsModel(@TempDir Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path p : files.sorted().toList()) {
        Path to = folder.resolve(DEMO.relativize(p).toString());
        if (Files.isDirectory(p)) {
          Files.createDirectories(to);
        } else {
          Files.copy(p, to);
        }
      }
    }
    Book demo = DemoBook.BOOK;
    int rows = demo.journal().applications().size();
    assertThat(ManyFieldsBook.write(DEMO, folder, rows + 1)).isEqualTo(2);
    Book many = new BookLoader().load(folder);
    assertThat(many.journal().applications()).hasSize(2 * rows);
    SiteAudit all = SiteAudit.of(many, many.fields());
    for (var field : demo.fields()) {
      // Audited alone it shares nothing.
      List<SeasonSites> own = sites(SiteAudit.of(demo, List.of(field)));
      for (int copy = 0; copy < 2; copy++) {
        String id = field.id().value().replace("-", "-" + copy + "x");
        List<SeasonSites> its =
            sites(all).stream().filter(s -> s.field().id().value().equals(id)).toList();
        assertThat(its).hasSameSizeAs(own);
        for (SeasonSites s : its) {
          assertThat(own)
              .anySatisfy(
                  o -> {
                    assertThat(s.season()).isEqualTo(o.season());
                    assertThat(s.weed().weed()).isEqualTo(o.weed().weed());
                    assertThat(s.met()).isEqualTo(o.met());
                    assertThat(s.dependence()).isEqualTo(o.dependence());
                    assertThat(s.kill()).isEqualTo(o.kill());
                  });
        }
      }
    }
    assertThat(all.acres().acres())
        .isCloseTo(2 * SiteAudit.of(demo, demo.fields()).acres().acres(), within(1e-9));
  }

  /** A long book is told of the fields that lean most; its ranks and acres are those of all. */
  @Test
  void ofALongBookTheWorstAreTold() {
    Book demo = DemoBook.BOOK;
    SiteAudit all = SiteAudit.of(demo, demo.fields());
    SiteAudit some = SiteAudit.of(demo, demo.fields(), 3);
    List<String> told = some.ranked().stream().map(r -> r.sites().field().id().value()).toList();
    assertThat(told.stream().distinct()).hasSize(3);
    assertThat(some.ranked().stream().map(RankedSites::reason).toList())
        .isEqualTo(
            all.ranked().stream()
                .filter(r -> told.contains(r.sites().field().id().value()))
                .map(RankedSites::reason)
                .toList());
    List<Integer> places =
        some.ranked().stream().flatMap(r -> r.rank().stream().boxed()).distinct().toList();
    assertThat(places).startsWith(1).isSorted();
    assertThat(some.findings())
        .isEqualTo(
            all.findings().stream().filter(f -> told.contains(f.field().id().value())).toList());
    assertThat(some.acres()).isEqualTo(all.acres());
    assertThat(some.growers()).isEqualTo(all.growers());
    assertThat(some.notAudited()).isEqualTo(all.notAudited());
    assertThat(all.notes()).isEmpty();
    assertThat(some.notes())
        .singleElement()
        .asString()
        .startsWith("All " + demo.fields().size() + " fields are counted in the acres")
        .contains("of the 3 that lean most");
    assertThat(SiteAudit.of(demo, demo.fields(), demo.fields().size()).notes()).isEmpty();
  }

  private static List<SeasonSites> sites(SiteAudit audit) {
    return audit.ranked().stream().map(RankedSites::sites).toList();
  }
}
