package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedKind;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Rate;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads what partners of one tank do to each other. */
final class InteractionReader {
  static final String FORMAT = "swathbook.interactions/1";

  private static final String EXAMPLE = "- {between: [clethodim, {site: 4}], on: grass, …}";
  private static final Pattern UNLESS = Pattern.compile("(.+) at (.+) or more");
  private static final List<String> KINDS = List.of("broadleaf", "grass", "sedge");

  private final Names<WeedId> weeds;
  private final Names<IngredientId> ingredients;
  private final Map<IngredientId, Ingredient> read;
  private final Set<Site> sites;
  private final Problems problems;

  InteractionReader(
      Names<WeedId> weeds,
      Names<IngredientId> ingredients,
      Map<IngredientId, Ingredient> read,
      Problems problems) {
    this.weeds = weeds;
    this.ingredients = ingredients;
    this.read = read;
    this.sites = new LinkedHashSet<>(read.values().stream().map(Ingredient::site).toList());
    this.problems = problems;
  }

  List<Interaction> read(CatalogFile file, MapReader map) {
    Entry.checkFormat(map, FORMAT);
    List<Interaction> out = new ArrayList<>();
    for (Node item : map.requireList("interactions", EXAMPLE)) {
      MapReader.of(item, EXAMPLE, problems).flatMap(m -> one(file, m)).ifPresent(out::add);
    }
    map.done();
    return out;
  }

  private Optional<Interaction> one(CatalogFile file, MapReader m) {
    int before = problems.count();
    List<Interaction.Side> sides =
        m.requireList("between", "[clethodim, {site: 4}]").stream()
            .flatMap(n -> side(n).stream())
            .toList();
    if (problems.count() == before && sides.size() != 2) {
      problems.add(
          m.mark("between"), "an interaction has two sides", "write '[clethodim, {site: 4}]'");
    }
    if (sides.size() == 2 && sides.get(0).equals(sides.get(1))) {
      problems.add(
          m.mark("between"), "both sides are the same", "name two different ones, or one site");
    }
    Optional<WeedKind> kindOfWeed = Optional.empty();
    Set<WeedId> weedsNamed = Set.of();
    Optional<Node> on = m.require("on", "grass");
    if (on.isPresent() && on.get() instanceof ScalarNode s && KINDS.contains(s.text())) {
      kindOfWeed = Optional.of(WeedKind.valueOf(s.text().toUpperCase(Locale.ROOT)));
    } else if (on.isPresent()) {
      weedsNamed = new LinkedHashSet<>(MapReader.all(on.get(), weeds.known(), "[SETFA]", problems));
    }
    boolean synergy =
        m.require("kind", Texts.oneOf(List.of("antagonism", "synergy")), "antagonism", "antagonism")
            .equals("synergy");
    String other = synergy ? "loses" : "survivors";
    if (m.has(other)) {
      problems.add(
          m.mark(other),
          "'" + other + "' does not belong to " + (synergy ? "a synergy" : "an antagonism"),
          "write 'loses' for an antagonism, 'survivors' for a synergy");
    }
    Optional<Interaction.Shares> size =
        synergy
            ? m.find("survivors", InteractionReader::shares, "80 %")
            : m.find("loses", InteractionReader::shares, "27-75 %");
    Optional<Interaction.Side> affects =
        synergy && !m.has("affects")
            ? sides.stream().findFirst()
            : m.require("affects", "clethodim").flatMap(this::side);
    if (affects.isPresent() && !sides.contains(affects.get()) && problems.count() == before) {
      problems.add(
          m.mark("affects"),
          "what is affected is neither side",
          "write one of the two sides again");
    }
    Optional<Interaction.Unless> unless =
        m.find("unless", this::unless, "clethodim at 0.094 lb ai/acre or more");
    String remedy = m.find("remedy", Texts::text, "spray them apart").orElse("");
    Optional<String> source = m.find("source", Texts::text, "from memory");
    if (source.isEmpty() && file.starter()) {
      problems.add(m.mark(), "the interaction has no source", "add 'source: from memory'");
    }
    m.done();
    if (problems.count() > before) {
      return Optional.empty();
    }
    return Optional.of(
        new Interaction(
            sides.get(0),
            sides.get(1),
            weedsNamed,
            kindOfWeed,
            synergy ? Interaction.Kind.SYNERGY : Interaction.Kind.ANTAGONISM,
            affects.orElseThrow(),
            size,
            unless,
            remedy,
            source.map(Source::new).orElse(Source.NOT_GIVEN)));
  }

  private Optional<Interaction.Side> side(Node node) {
    if (node instanceof ScalarNode) {
      return MapReader.scalar(node, ingredients.known(), "clethodim", problems)
          .map(i -> new Interaction.Side(Optional.of(i), Optional.empty(), Optional.empty()));
    }
    return MapReader.of(node, "{site: 9}", problems)
        .flatMap(
            m -> {
              m.require("site", "9");
              Optional<Site> site = m.find("site", this::site, "9");
              Optional<Site> with =
                  m.findMap("with", "{site: 4}")
                      .flatMap(
                          w -> {
                            w.require("site", "4");
                            Optional<Site> s = w.find("site", this::site, "4");
                            w.done();
                            return s;
                          });
              m.done();
              return site.map(s -> new Interaction.Side(Optional.empty(), Optional.of(s), with));
            });
  }

  private Site site(String text) {
    Site site =
        Site.find(text)
            .orElseThrow(
                () -> new MeasureException("'" + text + "' is no site; write its number, as 9"));
    // With an ingredient unread, its site may be the one.
    if (!sites.contains(site) && read.size() == ingredients.count()) {
      throw new MeasureException(
          "no ingredient of the catalog has site "
              + site
              + "; write one of: "
              + String.join(", ", sites.stream().sorted().map(Site::toString).toList()));
    }
    return site;
  }

  private static Interaction.Shares shares(String text) {
    Numbers.SplitRange range = Numbers.splitRange(text);
    TextParser<Double> share = Texts::share;
    return new Interaction.Shares(
        share.parse(Numbers.plain(range.low()) + " " + range.rest()),
        share.parse(Numbers.plain(range.high()) + " " + range.rest()));
  }

  private Interaction.Unless unless(String text) {
    Matcher m = UNLESS.matcher(text.strip());
    if (!m.matches()) {
      throw new MeasureException(
          "'" + text + "' is no rate of an active; write 'INGREDIENT at RATE or more'");
    }
    IngredientId id = ingredients.known().parse(m.group(1));
    Ingredient known = read.get(id);
    TextParser<Rate> rate = known == null ? Rate::parse : new ActiveRates(known.rateBasis()).one();
    return new Interaction.Unless(id, rate.parse(m.group(2)));
  }
}
