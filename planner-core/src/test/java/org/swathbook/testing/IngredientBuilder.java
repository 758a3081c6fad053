package org.swathbook.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;

/** An active step by step. It has neither soil nor foliar activity until one is given. */
public final class IngredientBuilder {
  private static final Source SOURCE = new Source("default, test fixture");

  private final String name;
  private final int site;
  private final Movement movement;
  private final Basis basis;
  private String capGroup;
  private LocalDate reviewed = LocalDate.of(2026, 11, 1);
  private Stated<Residual> residual = Stated.none(SOURCE);
  private Stated<Foliar> foliar = Stated.none(SOURCE);
  private Optional<String> incorporation = Optional.empty();
  private boolean restricted;
  private double[] volumes = {};
  private final List<AdjuvantNeed> adjuvants = new ArrayList<>();
  private final Set<AdjuvantKind> refusedAdjuvants = new LinkedHashSet<>();
  private final List<UseBuilder> uses = new ArrayList<>();
  private final Map<CropId, Stated<List<RotationRow>>> rotation = new LinkedHashMap<>();

  private IngredientBuilder(String name, int site, Movement movement, Basis basis) {
    this.name = name;
    this.site = site;
    this.movement = movement;
    this.basis = basis;
    this.capGroup = name;
  }

  public static IngredientBuilder of(String name, int site, Movement movement, Basis basis) {
    return new IngredientBuilder(name, site, movement, basis);
  }

  public IngredientBuilder capGroup(String group) {
    capGroup = group;
    return this;
  }

  /** Field lengths at two rates, in lb per acre, and the activating rain in mm. */
  public IngredientBuilder soil(
      double low, int lowDays, double high, int highDays, double activatingRainMm) {
    residual =
        Stated.value(
            new Residual(
                Rate.lbPerAcre(low, basis),
                lowDays,
                Rate.lbPerAcre(high, basis),
                highDays,
                activatingRainMm),
            SOURCE);
    return this;
  }

  public IngredientBuilder foliar(double rainfastHours) {
    foliar = Stated.value(new Foliar(Stated.value(rainfastHours, SOURCE)), SOURCE);
    return this;
  }

  public IngredientBuilder incorporate(String how) {
    incorporation = Optional.of(how);
    return this;
  }

  public IngredientBuilder reviewed(String date) {
    reviewed = LocalDate.parse(date);
    return this;
  }

  public IngredientBuilder restricted() {
    restricted = true;
    return this;
  }

  /** Least, advised and highest spray volume of the label, gal/acre. */
  public IngredientBuilder volumes(double least, double advised, double most) {
    volumes = new double[] {least, advised, most};
    return this;
  }

  /** Any one of the kinds, by their spelling. */
  public IngredientBuilder needs(String rate, boolean refusedWithout, String... kinds) {
    adjuvants.add(new AdjuvantNeed(kinds(kinds), Optional.of(rate), refusedWithout));
    return this;
  }

  /** Any one of the kinds, each followed by its rate; only advised. */
  public IngredientBuilder needsEach(String... kindsAndRates) {
    Map<AdjuvantKind, String> rates = new LinkedHashMap<>();
    for (int k = 0; k < kindsAndRates.length; k += 2) {
      rates.put(AdjuvantKind.find(kindsAndRates[k]).orElseThrow(), kindsAndRates[k + 1]);
    }
    adjuvants.add(new AdjuvantNeed(rates.keySet(), rates, false));
    return this;
  }

  public IngredientBuilder refuses(String... kinds) {
    refusedAdjuvants.addAll(kinds(kinds));
    return this;
  }

  private static Set<AdjuvantKind> kinds(String... spellings) {
    return Arrays.stream(spellings)
        .map(k -> AdjuvantKind.find(k).orElseThrow())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  public IngredientBuilder use(UseBuilder use) {
    uses.add(use);
    return this;
  }

  /** Months before a next crop; rows in order, first match wins, none when none is given. */
  public IngredientBuilder rotation(String nextCrop, RotationRow... rows) {
    rotation.put(
        CropId.of(nextCrop),
        rows.length == 0 ? Stated.none(SOURCE) : Stated.value(List.of(rows), SOURCE));
    return this;
  }

  public Ingredient build() {
    Stated<Boolean> restrictedUse =
        restricted ? Stated.value(true, SOURCE) : Stated.unknown("restricted use");
    Terms plain = FixtureTerms.of(foliar, restrictedUse, adjuvants, refusedAdjuvants);
    Terms terms =
        volumes.length == 0
            ? plain
            : FixtureTerms.withVolumes(plain, volumes[0], volumes[1], volumes[2]);
    return new Ingredient(
        IngredientId.of(name),
        name,
        List.of(),
        Site.of(site),
        "",
        basis,
        movement,
        capGroup,
        residual,
        Stated.unknown("half-life"),
        uses.stream().map(u -> u.build(terms)).toList(),
        false,
        rotation,
        terms,
        incorporation,
        Map.of(),
        reviewed);
  }
}
