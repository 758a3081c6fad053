package org.swathbook.catalog.file;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms;
import org.swathbook.measure.Numbers;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads the block {@code tank} of an ingredient or a use. */
final class TankReader {
  private static final String NEED = "- {anyOf: [crop-oil], rate: 1 % v/v, without: warn}";
  private static final String RATE = "8.5 lb/100 gal";

  private static final TextParser<AdjuvantKind> ADJUVANT =
      Texts.oneOf(AdjuvantKind.values(), AdjuvantKind::spelling);
  private static final TextParser<DropletClass> DROPLETS =
      Texts.oneOf(DropletClass.values(), DropletClass::spelling);
  private static final TextParser<TankTerms.Rinse> RINSE =
      Texts.oneOf(TankTerms.Rinse.values(), TankTerms.Rinse::spelling);

  private final Entry entry;
  private final Names<IngredientId> ingredients;
  private final Names<CropId> crops;

  TankReader(Entry entry, Names<IngredientId> ingredients, Names<CropId> crops) {
    this.entry = entry;
    this.ingredients = ingredients;
    this.crops = crops;
  }

  static TankTerms unknown() {
    return new TankTerms(
        Stated.unknown("adjuvant that is needed"),
        Stated.unknown("adjuvants that are refused"),
        Stated.unknown("list of partners"),
        Stated.unknown("droplet classes"),
        Stated.unknown("list of nozzles"),
        Stated.unknown("insecticides that may not go with it"),
        Stated.unknown("whether a jar test is allowed"),
        Stated.unknown("clean-out"));
  }

  TankTerms read(MapReader in, Place holder, TankTerms base) {
    MapReader m = TermsReader.block(in, "tank", "tank: {partners: none}");
    Place at = holder.then("tank");
    TankTerms read =
        new TankTerms(
            TermsReader.over(
                base.adjuvantNeeded(),
                m,
                "adjuvantNeeded",
                entry.stated(m, "adjuvantNeeded", at, "adjuvant that is needed", this::needs)),
            TermsReader.over(
                base.adjuvantRefused(),
                m,
                "adjuvantRefused",
                entry.stated(
                    m, "adjuvantRefused", at, "adjuvants that are refused", this::adjuvants)),
            TermsReader.over(
                base.partners(),
                m,
                "partners",
                entry.stated(
                    m,
                    "partners",
                    at,
                    "list of partners",
                    entry.map("partners: {only: [glyphosate]}", this::partners))),
            TermsReader.over(
                base.droplets(),
                m,
                "droplets",
                entry.stated(
                    m,
                    "droplets",
                    at,
                    "droplet classes",
                    entry.map("droplets: {from: medium, to: coarse}", TankReader::droplets))),
            TermsReader.over(
                base.nozzlesListed(),
                m,
                "nozzles",
                entry.stated(
                    m, "nozzles", at, "list of nozzles", TermsReader.only("listed"), "listed")),
            TermsReader.over(
                base.insecticides(),
                m,
                "insecticides",
                entry.stated(
                    m,
                    "insecticides",
                    at,
                    "insecticides that may not go with it",
                    entry.map("insecticides: {refused: [organophosphate]}", this::insecticides))),
            TermsReader.over(
                base.jarTestRefused(),
                m,
                "jarTest",
                entry.stated(
                    m,
                    "jarTest",
                    at,
                    "whether a jar test is allowed",
                    TermsReader.only("refused"),
                    "refused")),
            TermsReader.over(
                base.cleanOut(),
                m,
                "cleanOut",
                entry.stated(
                    m,
                    "cleanOut",
                    at,
                    "clean-out",
                    entry.map(
                        "cleanOut: {rinse: triple-rinse, sensitive: [soybean]}", this::rinse))));
    m.done();
    return read;
  }

  private Optional<List<TankTerms.AdjuvantNeed>> needs(Node node) {
    return entry.rows(node, NEED, this::need);
  }

  private Optional<TankTerms.AdjuvantNeed> need(MapReader m) {
    Optional<Node> kinds = m.require("anyOf", "[crop-oil]");
    boolean refusedWithout =
        m.require("without", Texts.oneOf(List.of("warn", "refused")), "warn", "warn")
            .equals("refused");
    if (kinds.isPresent() && kinds.get() instanceof MapNode each) {
      Map<AdjuvantKind, String> rates = rates(each);
      if (m.node().find("rate").isPresent()) {
        m.problems()
            .add(
                m.mark("rate"),
                "each kind has a rate of its own already",
                "leave out 'rate', or write the kinds as a list");
      }
      m.find("rate");
      return Optional.of(new TankTerms.AdjuvantNeed(rates.keySet(), rates, refusedWithout));
    }
    return Optional.of(
        new TankTerms.AdjuvantNeed(
            kinds.flatMap(this::adjuvants).orElse(Set.of()),
            m.find("rate", TankReader::amount, RATE),
            refusedWithout));
  }

  private Map<AdjuvantKind, String> rates(MapNode each) {
    Map<AdjuvantKind, String> out = new LinkedHashMap<>();
    if (each.entries().isEmpty()) {
      entry.problems().add(each.mark(), "no kind is named", "write '{crop-oil: 1 % v/v}'");
      return out;
    }
    MapReader m = new MapReader(each, entry.problems());
    Map<String, AdjuvantKind> kinds = new LinkedHashMap<>();
    for (AdjuvantKind k : AdjuvantKind.values()) {
      m.find(k.spelling());
      kinds.put(k.spelling(), k);
    }
    for (MapNode.Entry e : each.entries()) {
      AdjuvantKind kind = kinds.get(e.key());
      if (kind != null) {
        m.find(e.key(), TankReader::amount, RATE).ifPresent(r -> out.put(kind, r));
      }
    }
    m.done();
    return out;
  }

  private static String amount(String text) {
    Numbers.splitRange(text);
    return text.strip();
  }

  private Optional<Set<AdjuvantKind>> adjuvants(Node node) {
    return Optional.of(
        new LinkedHashSet<>(MapReader.all(node, ADJUVANT, "crop-oil", entry.problems())));
  }

  private Optional<TankTerms.PartnerList> partners(MapReader m) {
    List<IngredientId> only = m.findAll("only", ingredients.known(), "glyphosate");
    List<IngredientId> refused = m.findAll("refused", ingredients.known(), "glyphosate");
    if (m.node().find("only").isPresent() == m.node().find("refused").isPresent()) {
      m.problems()
          .add(
              m.mark(),
              "a list of partners either allows or refuses",
              "write '{only: [...]}' or '{refused: [...]}'");
      return Optional.empty();
    }
    boolean allows = m.node().find("only").isPresent();
    return Optional.of(
        new TankTerms.PartnerList(allows, new LinkedHashSet<>(allows ? only : refused)));
  }

  private static Optional<TankTerms.DropletRange> droplets(MapReader m) {
    DropletClass from = m.require("from", DROPLETS, "medium", DropletClass.EXTREMELY_FINE);
    DropletClass to = m.require("to", DROPLETS, "coarse", DropletClass.ULTRA_COARSE);
    if (from.compareTo(to) > 0) {
      m.problems()
          .add(m.mark(), "'from' is coarser than 'to'", "write the finer class under 'from'");
    }
    return Optional.of(new TankTerms.DropletRange(from, to));
  }

  private Optional<TankTerms.InsecticideLimit> insecticides(MapReader m) {
    TankTerms.InsecticideLimit limit =
        new TankTerms.InsecticideLimit(
            new LinkedHashSet<>(m.findAll("refused", Texts::text, "organophosphate")),
            new LinkedHashSet<>(m.findAll("caution", Texts::text, "organophosphate")),
            m.find("foliarWait", Texts::days, "7 days").stream().mapToInt(d -> d).findFirst());
    if (m.find("refused").isEmpty() && m.find("caution").isEmpty()) {
      m.problems()
          .add(
              m.mark(),
              "no class of insecticides is named",
              "write '{refused: [organophosphate]}', or 'none'");
    }
    return Optional.of(limit);
  }

  private Optional<TankTerms.CleanOut> rinse(MapReader m) {
    return Optional.of(
        new TankTerms.CleanOut(
            m.require("rinse", RINSE, "triple-rinse", TankTerms.Rinse.WATER_RINSE),
            new LinkedHashSet<>(m.findAll("sensitive", crops.known(), "soybean"))));
  }
}
