package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/**
 * Pages as a browser lays them out, on a desktop, a sheet of paper and a phone. It runs where a
 * headless Chromium is on the path; else it says that nothing was looked at.
 */
@Tag("slow")
class PagesInBrowserTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");
  private static final int[] WIDTHS = {1200, 720, 400};
  private static final Pattern FOUND = Pattern.compile("data-found=\"([^\"]*)\"");

  /**
   * What sticks out: the page beyond its frame, or words of a picture beyond the picture. Half a
   * pixel is rounding.
   */
  private static final String LOOK =
      """
      <script>
      const errors = [];
      onerror = m => { errors.push(m); };
      onload = () => {
        const d = document.getElementById('f').contentDocument;
        const found = [];
        const wide = d.documentElement.scrollWidth - d.documentElement.clientWidth;
        if (wide > 0) found.push('page by ' + wide + ' px');
        for (const svg of d.querySelectorAll('svg.wide, svg.narrow')) {
          const box = svg.getBoundingClientRect();
          if (box.width === 0) continue;
          for (const t of svg.querySelectorAll('text')) {
            const b = t.getBoundingClientRect();
            if (b.left < box.left - 0.5 || b.right > box.right + 0.5)
              found.push('words: ' + t.textContent);
          }
        }
        document.body.setAttribute('data-found', found.concat(errors).join('; '));
        document.body.setAttribute('data-drawn', d.querySelectorAll('svg text').length);
      };
      </script>
      """;

  @TempDir Path folder;

  private static Optional<Path> chromium() {
    return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
        .flatMap(
            p ->
                Arrays.stream(new String[] {"chromium", "chromium-browser"})
                    .map(n -> Path.of(p, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private Map<String, Path> pages() {
    Map<String, String[]> calls = new LinkedHashMap<>();
    calls.put("season", new String[] {"nd-1-two-layers"});
    calls.put("check", new String[] {"nd-1-june"});
    calls.put("load", new String[] {"nd-1-june"});
    calls.put("audit", new String[] {});
    calls.put("audit planned", new String[] {"--planned", "nd-1-two-layers"});
    calls.put("audit what-if", new String[] {"--what-if", "posts-by:V3"});
    calls.put("escapes", new String[] {"nd-1-june"});
    calls.put(
        "plan",
        new String[] {"ND-1", "--why-not", "dicamba", "--handout", file("handout").toString()});
    calls.put("order", new String[] {"ND-1", "--substitutes"});
    calls.put("plan compare", new String[] {"ND-1", "--compare", "nd-1-two-layers", "last-year"});
    calls.put("plan queue", new String[] {"--queue"});
    Map<String, Path> out = new LinkedHashMap<>();
    calls.forEach(
        (name, args) -> {
          Path file = file(name.replace(' ', '-'));
          String[] all = Arrays.copyOf(args, args.length + 2);
          all[args.length] = "--html";
          all[args.length + 1] = file.toString();
          assertThat(Called.with(name.split(" ")[0], DEMO, all).code()).isEqualTo(ExitCode.DONE);
          out.put(name, file);
        });
    out.put("handout", file("handout"));
    return out;
  }

  private Path file(String name) {
    return folder.resolve(name + ".html");
  }

  private static Path chromiumOrSkipped() {
    Optional<Path> chromium = chromium();
    if (chromium.isEmpty()) {
      String why =
          "no Chromium on the path: NO PAGE WAS LOOKED AT in a browser; .ci/slow installs one";
      System.err.println("PagesInBrowserTest skipped: " + why);
      assumeTrue(false, why);
    }
    return chromium.orElseThrow();
  }

  @Test
  void nothingSticksOutAtAnyWidth() throws Exception {
    Path chromium = chromiumOrSkipped();
    for (Map.Entry<String, Path> page : pages().entrySet()) {
      String inside =
          Files.readString(page.getValue()).replace("&", "&amp;").replace("\"", "&quot;");
      for (int width : WIDTHS) {
        Path around = folder.resolve("around.html");
        Files.writeString(
            around,
            "<!DOCTYPE html><meta charset=utf-8>"
                + LOOK
                + "<body><iframe id=f style=\"border:0;height:900px;width:"
                + width
                + "px\" srcdoc=\""
                + inside
                + "\"></iframe>");
        String dom = run(chromium, "--dump-dom", around.toUri().toString());
        Matcher found = FOUND.matcher(dom);
        assertThat(found.find()).as("the browser looked at %s", page.getKey()).isTrue();
        assertThat(found.group(1)).as("%s, %s px wide", page.getKey(), width).isEmpty();
      }
      Path paper = folder.resolve(page.getKey().replace(' ', '-') + ".pdf");
      run(chromium, "--print-to-pdf=" + paper, page.getValue().toUri().toString());
      assertThat(Files.size(paper)).as("%s on paper", page.getKey()).isGreaterThan(5000);
    }
  }

  /** Ends of page objects in a PDF of Chromium, whose page tree is not compressed. */
  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b(?!s)");

  private static final Pattern SECTION = Pattern.compile("<section [^>]*class=\"field ");

  private long sheets(Path chromium, String page, String paper) throws Exception {
    Path file = folder.resolve("sheets.html");
    Files.writeString(
        file, page.replace("</head>", "<style>@page { size: " + paper + "; }</style></head>"));
    Path pdf = folder.resolve("sheets.pdf");
    Files.deleteIfExists(pdf);
    run(chromium, "--print-to-pdf=" + pdf, file.toUri().toString());
    return SHEET.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1)).results().count();
  }

  /** Of every farm and field of the demo book, on American and on international paper. */
  @Test
  void everyFarmAndEveryFieldOfTheGrowersCopyTakesOneSheet() throws Exception {
    Path chromium = chromiumOrSkipped();
    Path copy = file("copy");
    assertThat(Called.with("plan", DEMO, "--handout", copy.toString()).code())
        .isEqualTo(ExitCode.DONE);
    String page = Files.readString(copy);
    long sections = SECTION.matcher(page).results().count();
    assertThat(sections).as("three farms and twelve fields").isEqualTo(15);
    for (String paper : List.of("letter", "A4")) {
      // Each begins a sheet of its own, so as many sheets as sections is one for each.
      assertThat(sheets(chromium, page, paper)).as("sheets of %s", paper).isEqualTo(sections);
    }
    String longer =
        page.replaceFirst("<h3>What goes on, in order</h3>", "$0" + "<p>x</p>".repeat(99));
    assertThat(sheets(chromium, longer, "letter"))
        .as("one that is too long is seen")
        .isGreaterThan(sections);
  }

  private String run(Path chromium, String what, String url)
      throws IOException, InterruptedException {
    Path out = folder.resolve("out.txt");
    Process p =
        new ProcessBuilder(
                chromium.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--user-data-dir=" + folder.resolve("profile"),
                "--window-size=1300,1000",
                what,
                url)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!p.waitFor(120, TimeUnit.SECONDS)) {
      p.destroyForcibly();
      throw new IOException("the browser did not come back");
    }
    return Files.readString(out);
  }
}
