package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.source.ProblemsException;
import org.swathbook.testing.DemoBook;

class ProgramReaderTest {
  private static final Book BOOK = DemoBook.BOOK;

  private static Program read(String text) {
    return ProgramReader.read("p.yaml", text.getBytes(StandardCharsets.UTF_8), BOOK);
  }

  private static Program passes(String passes) {
    return read("format: swathbook.program/1\nname: Invented\nfield: nd-1\npasses:\n" + passes);
  }

  private static List<String> problems(String passes) {
    return catchThrowableOfType(ProblemsException.class, () -> passes(passes)).report();
  }

  private static Anchor at(String text) {
    return passes(
            "  - at: " + text + "\n    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]\n")
        .passes()
        .get(0)
        .at();
  }

  @Test
  void theDemoProgram() {
    BookPaths paths = new BookPaths(DemoBookTest.FOLDER);
    Path file = paths.find(BookPaths.Kind.PROGRAM, "nd-1-two-layers");
    Program p = ProgramReader.read(file, paths, BOOK);
    assertThat(p.name()).isEqualTo("Two layers, two foliar sites");
    assertThat(p.field()).hasToString("ND-1");
    assertThat(p.passes()).hasSize(2);
    assertThat(p.passes().get(0).at()).isEqualTo(new Anchor.FromPlanting(0));
    Pass post = p.passes().get(1);
    assertThat(post.at()).isEqualTo(new Anchor.FromPlanting(26));
    assertThat(post.mix().doses()).hasSize(4);
    assertThat(post.mix().adjuvants())
        .containsExactly(new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
    assertThat(post.mix().gallonsPerAcre()).hasValue(15);
  }

  @Test
  void everyWayToSayWhen() {
    assertThat(at("planting")).isEqualTo(new Anchor.FromPlanting(0));
    assertThat(at("1 day before planting")).isEqualTo(new Anchor.FromPlanting(-1));
    assertThat(at("28 days after planting")).isEqualTo(new Anchor.FromPlanting(28));
    assertThat(at("2027-06-08")).hasToString("2027-06-08");
    assertThat(at("stage v3")).isEqualTo(new Anchor.AtStage("V3"));
    Anchor.WhenWeedIs tall = (Anchor.WhenWeedIs) at("when palmer amaranth is 3 in");
    assertThat(tall.weed()).isEqualTo(WeedId.of("AMAPA"));
    assertThat(tall.heightCm()).isEqualTo(7.62, within(1e-12));
  }

  @Test
  void anIngredientMayNameTheProductItComesFrom() {
    Program p =
        passes(
            """
              - at: planting
                mix:
                  - {ingredient: acetochlor, product: acetochlor-3cs, rate: 1.1 lb ai/acre}
                  - {ingredient: acetochlor, rate: 1.1 lb ai/acre}
            """);
    assertThat(p.passes().get(0).mix().doses().get(0).product().id()).hasToString("acetochlor-3cs");
    assertThat(p.passes().get(0).mix().doses()).allMatch(d -> d.named());
  }

  @Test
  void wrongTimes() {
    assertThat(
            problems(
                """
                  - at: soon
                    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
                  - at: stage V33
                    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
                  - at: 2028-06-01
                    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
                  - at: when AMAPAX is 3 in
                    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
                """))
        .containsExactly(
            "p.yaml:5:9: 'soon' is no time of a pass; write as planting, 2027-05-10, 28 days after"
                + " planting, stage V3, or when AMAPA is 3 in",
            "p.yaml:7:9: 'V33' is no stage of soybean; did you mean 'V3'?",
            "p.yaml:9:9: '2028-06-01' is not in the season 2027; write a date from 2026-09-01 to"
                + " 2027-10-31",
            "p.yaml:11:9: 'AMAPAX' is no weed of the catalog; did you mean 'AMAPA'?");
  }

  @Test
  void wrongMixes() {
    assertThat(
            problems(
                """
                  - at: planting
                    mix:
                      - {product: glyphosate, rate: 32 fl oz/acre}
                      - {ingredient: glyphosate, rate: 32 fl oz/acre}
                      - {ingredient: glyphosate-4.5sl, rate: 32 fl oz/acre}
                      - {rate: 32 fl oz/acre}
                      - {product: metribuzin-75wg, rate: 1 pt/acre}
                      - {ingredient: metribuzin, product: glyphosate-4.5sl, rate: 0.3 lb ai/acre}
                      - {ingredient: metribuzin, rat: 0.3 lb ai/acre}
                    adjuvants: [{kind: crop oil, rate: 1 %}, {kind: soap, rate: 1 % v/v}]
                    carrier: {volume: 15 lb/acre}
                  - at: planting
                    mix: []
                """))
        .containsExactly(
            "p.yaml:7:19: 'glyphosate' is an ingredient, not a product; name a product:"
                + " glyphosate-4.5sl (4.5 lb ae/gal)",
            "p.yaml:8:40: '32 fl oz/acre' of glyphosate does not say of which strength; write a"
                + " weight of it, or name a product: glyphosate-4.5sl (4.5 lb ae/gal)",
            "p.yaml:9:22: 'glyphosate-4.5sl' is a product, not an ingredient; name it as"
                + " 'product'",
            "p.yaml:10:9: neither product nor ingredient is named; write as {product:"
                + " glyphosate-4.5sl, rate: 32 fl oz/acre}",
            "p.yaml:11:42: '1 pt/acre' is a volume, metribuzin-75wg is dry; write its rate in oz"
                + " weight/acre",
            "p.yaml:12:43: 'glyphosate-4.5sl' does not hold metribuzin alone; name one of:"
                + " metribuzin-75wg (75 %)",
            "p.yaml:13:9: the key 'rate' is missing; write 'rate: 32 fl oz/acre'",
            "p.yaml:13:34: the key 'rat' is not known here; did you mean 'rate'?",
            "p.yaml:14:40: '1 %' is no rate; write an amount per area, as '1.27 lb ai/acre'",
            "p.yaml:14:53: 'soap' is no kind of adjuvant; write one of: ammonium-sulfate,"
                + " water-conditioner, crop-oil, methylated-seed-oil, nonionic-surfactant,"
                + " liquid-nitrogen, volatility-reducer, drift-reducer",
            "p.yaml:15:23: '15 lb/acre' is no spray volume; write as '15 gal/acre'",
            "p.yaml:17:10: the mix is empty; name at least one product");
  }

  @Test
  void passesStandInTheOrderInWhichTheyAreMade() {
    assertThat(
            problems(
                """
                  - at: 26 days after planting
                    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
                  - at: planting
                    mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
                """))
        .containsExactly(
            "p.yaml:7:5: the pass of 2027-05-11 comes before that of 2027-06-06 above it; write"
                + " passes in the order in which they are made");
  }

  @Test
  void anUnknownField() {
    assertThat(
            catchThrowableOfType(
                    ProblemsException.class,
                    () -> read("format: swathbook.program/1\nname: x\nfield: ND-11\npasses: []\n"))
                .report())
        .containsExactly("p.yaml:3:8: 'ND-11' is no field of the book; did you mean 'ND-1'?");
  }
}
