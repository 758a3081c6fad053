package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** The remedy for a season that leans on one site, on the demo book's own fields (invented). */
class AddedSiteTest {
  private static final Path DEMO = Path.of("..", "demo-data");
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final String POST = "{ingredient: 2-4-D choline, rate: 0.95 lb ae/acre}";

  @TempDir Path folder;

  /** The demo book where the house asks for another share with one site gone. */
  private Book book(String oneSiteGone) throws IOException {
    try (Stream<Path> all = Files.walk(DEMO)) {
      for (Path p : all.sorted().toList()) {
        Path to = folder.resolve(DEMO.relativize(p).toString());
        if (Files.isDirectory(p)) {
          Files.createDirectories(to);
        } else {
          Files.copy(p, to);
        }
      }
    }
    Path yaml = folder.resolve("book.yaml");
    Files.writeString(
        yaml, Files.readString(yaml).replace("oneSiteGone: 90 %", "oneSiteGone: " + oneSiteGone));
    return new BookLoader().load(folder);
  }

  private record Judged(Judgement plain, Judgement named) {
    List<Finding> warned(Judgement j) {
      return j.findings().stream()
          .filter(f -> f.rule().value().equals("depends-on-one-site"))
          .filter(f -> f.severity() == Severity.WARN)
          .toList();
    }
  }

  private Judged judged(Book book, String post) throws IOException {
    Path file = folder.resolve("programs").resolve("trial.yaml");
    Files.writeString(
        file,
        """
        format: swathbook.program/1
        name: Trial
        field: ND-1
        passes:
          - at: planting
            mix:
              - {ingredient: S-metolachlor, rate: 1.27 lb ai/acre}
              - {ingredient: flumioxazin, rate: 0.08 lb ai/acre}
          - at: 17 days after planting
            mix: [%s]
            carrier: {volume: 15 gal/acre}
        """
            .formatted(post));
    Program program = ProgramReader.read(file, new BookPaths(folder), book);
    TraceSet traces = TraceBuilder.build(book, book.findField("ND-1").orElseThrow(), TODAY);
    SeasonOutcome season = SeasonWalk.walk(book, traces, program);
    Judgement plain = ProgramJudge.judge(book, traces, season, TODAY);
    return new Judged(
        plain, AddedSite.named(book, Kernel.of(book, traces), program, season, plain, TODAY));
  }

  @Test
  void theAdditionIsNamedWithItsCostAndDoesWhatItSays() throws IOException {
    Book book = book("75 %");
    Judged before = judged(book, POST);

    assertThat(before.warned(before.plain())).isNotEmpty();
    assertThat(before.warned(before.named()))
        .extracting(Finding::remedy)
        .allMatch(r -> r.startsWith("add 36 fl oz/acre of glufosinate-2.34sl in pass 2, $"))
        .allMatch(r -> r.endsWith("judged again by every rule"));

    Judged after = judged(book, POST + ", {product: glufosinate-2.34sl, rate: 36 fl oz/acre}");
    assertThat(after.warned(after.plain())).isEmpty();
  }

  @Test
  void whereNoneIsEnoughTheNearestIsNamed() throws IOException {
    Judged judged = judged(book("90 %"), POST);

    assertThat(judged.warned(judged.named()))
        .extracting(Finding::remedy)
        .allMatch(r -> r.startsWith("no single product added to one pass is enough; nearest comes"))
        .allMatch(r -> r.endsWith("plan looks for whole programs"));
  }

  @Test
  void nothingElseOfTheJudgementChanges() throws IOException {
    Judged judged = judged(book("75 %"), POST);

    assertThat(judged.named().verdict()).isEqualTo(judged.plain().verdict());
    assertThat(judged.named().asks()).isEqualTo(judged.plain().asks());
    assertThat(judged.named().findings())
        .extracting(Finding::message)
        .isEqualTo(judged.plain().findings().stream().map(Finding::message).toList());
  }

  @Test
  void aSeasonThatLeansOnNoneIsLeftAsItIs() throws IOException {
    Judged judged = judged(book("1 %"), POST);

    assertThat(judged.named()).isSameAs(judged.plain());
  }
}
