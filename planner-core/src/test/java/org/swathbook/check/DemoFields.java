package org.swathbook.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Program;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.UseFacts;
import org.swathbook.testing.DemoBook;

/** The demo book with its traces, read once, and doses drawn from its catalog. */
final class DemoFields {
  private static final Path DEMO = Path.of("..", "demo-data");
  static final Book BOOK = DemoBook.BOOK;
  private static final Map<Field, TraceSet> TRACES = new LinkedHashMap<>();

  private DemoFields() {}

  static synchronized TraceSet traces(Field field) {
    return TRACES.computeIfAbsent(field, f -> TraceBuilder.build(BOOK, f));
  }

  /** What the rules on uses and on sequences say of one pass. */
  static Findings findings(Field field, PassTiming timing, Mix mix) {
    TraceSet traces = traces(field);
    Findings out = Findings.all();
    for (UseFacts facts : UseJudge.facts(BOOK, traces, 0, timing, mix)) {
      out.addAll(UseJudge.judge(facts));
    }
    out.addAll(
        SequenceJudge.judge(
            BOOK,
            field,
            List.of(new DatedMix(0, timing.medianDate(), PassPositions.of(traces, timing), mix))));
    return out;
  }

  static Field field(String id) {
    return BOOK.findField(id).orElseThrow();
  }

  static Program program(String name) {
    try {
      return ProgramReader.read(
          name, Files.readAllBytes(DEMO.resolve("programs").resolve(name)), BOOK);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** A product at a rate that its first active's first stated use allows, or twice or half that. */
  static Dose dose(Random random) {
    List<Product> products = new ArrayList<>(BOOK.catalog().products());
    Product product = products.get(random.nextInt(products.size()));
    Ingredient first = BOOK.catalog().ingredient(product.contents().get(0).ingredient());
    double kgPerHa =
        first.uses().stream()
            .flatMap(u -> u.rates().find().stream())
            .flatMap(List::stream)
            .flatMap(r -> r.rates().stream())
            .mapToDouble(r -> r.high().kgPerHa())
            .findFirst()
            .orElse(1);
    double[] factors = {0.4, 0.8, 1, 1, 1, 2.1, 12};
    double factor = factors[random.nextInt(factors.length)];
    double perHa = product.contents().get(0).concentration().productPerHa(kgPerHa * factor);
    Rate rate = Doses.productRate(product, perHa);
    return Doses.ofProduct(BOOK.catalog(), product, rate);
  }
}
