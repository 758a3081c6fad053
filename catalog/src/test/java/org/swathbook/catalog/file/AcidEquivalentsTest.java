package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Concentration;

/**
 * Strengths in acid equivalent against chemistry and against labels. Shares of the acid are
 * computed from molar masses with the standard atomic weights of IUPAC (Prohaska et al. 2022, Pure
 * and Applied Chemistry 94:573-600, abridged values); formulas from memory.
 */
class AcidEquivalentsTest {
  private static final Map<String, Double> ATOMIC_WEIGHTS =
      Map.of(
          "H", 1.0080, "C", 12.011, "N", 14.007, "O", 15.999, "F", 18.998, "P", 30.974, "Cl", 35.45,
          "K", 39.098);

  private static final Pattern ATOMS = Pattern.compile("([A-Z][a-z]?)(\\d*)");

  private final Catalog starter = new CatalogLoader().starter();

  /** Labels print three digits. */
  private static final double PRINTED = 0.005;

  /** A salt or an ester with the acid (or cation) that counts. */
  private record Form(String name, String counted, String whole) {

    double share() {
      return molarMass(counted) / molarMass(whole);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static final Form GLYPHOSATE_ISOPROPYLAMINE =
      new Form("glyphosate isopropylamine", "C3H8NO5P", "C6H17N2O5P");
  private static final Form GLYPHOSATE_DIMETHYLAMINE =
      new Form("glyphosate dimethylamine", "C3H8NO5P", "C5H15N2O5P");
  private static final Form GLYPHOSATE_POTASSIUM =
      new Form("glyphosate potassium", "C3H8NO5P", "C3H7KNO5P");
  private static final Form DICAMBA_DIMETHYLAMINE =
      new Form("dicamba dimethylamine", "C8H6Cl2O3", "C10H13Cl2NO3");
  private static final Form DICAMBA_ISOPROPYLAMINE =
      new Form("dicamba isopropylamine", "C8H6Cl2O3", "C11H15Cl2NO3");
  private static final Form DICAMBA_DIGLYCOLAMINE =
      new Form("dicamba diglycolamine", "C8H6Cl2O3", "C12H17Cl2NO5");
  private static final Form D_DIMETHYLAMINE =
      new Form("2,4-D dimethylamine", "C8H6Cl2O3", "C10H13Cl2NO3");
  private static final Form D_CHOLINE = new Form("2,4-D choline", "C8H6Cl2O3", "C13H19Cl2NO4");
  private static final Form D_ETHYLHEXYL =
      new Form("2,4-D 2-ethylhexyl ester", "C8H6Cl2O3", "C16H22Cl2O3");
  private static final Form CLOPYRALID_OLAMINE =
      new Form("clopyralid olamine", "C6H3Cl2NO2", "C8H10Cl2N2O3");
  private static final Form FLUROXYPYR_MEPTYL =
      new Form("fluroxypyr-meptyl", "C7H5Cl2FN2O3", "C15H21Cl2FN2O3");
  private static final Form PARAQUAT_DICHLORIDE =
      new Form("paraquat dichloride", "C12H14N2", "C12H14Cl2N2");

  private static double molarMass(String formula) {
    Matcher m = ATOMS.matcher(formula);
    double mass = 0;
    while (m.find()) {
      int count = m.group(2).isEmpty() ? 1 : Integer.parseInt(m.group(2));
      mass += count * Objects.requireNonNull(ATOMIC_WEIGHTS.get(m.group(1)), formula);
    }
    return mass;
  }

  /** Molar masses that reference works print (g/mol; PubChem, from memory). */
  @ParameterizedTest
  @CsvSource({
    "glyphosate, C3H8NO5P, 169.07",
    "glyphosate isopropylamine, C6H17N2O5P, 228.18",
    "'2,4-D', C8H6Cl2O3, 221.03",
    "2-ethylhexyl ester, C16H22Cl2O3, 333.25",
    "paraquat cation, C12H14N2, 186.25"
  })
  void molarMassesAreThoseOfReferenceWorks(String name, String formula, double expected) {
    assertThat(molarMass(formula)).as(name).isCloseTo(expected, within(0.02));
  }

  /** What labels print beside each other: so much of the form holds so much of the acid. */
  static Stream<Arguments> printed() {
    return Stream.of(
        // Label of a 480 g/L isopropylamine salt: 356 g of the acid per litre.
        Arguments.of(GLYPHOSATE_ISOPROPYLAMINE, "480 g/L", "356 g ae/L"),
        // Label of a dimethylamine salt: 5.07 lb of the salt are 4 lb of the acid per gallon.
        Arguments.of(GLYPHOSATE_DIMETHYLAMINE, "5.07 lb/gal", "4 lb ae/gal"),
        // Label of a potassium salt, 5.5 lb of the salt are 4.5 lb of the acid; from memory.
        Arguments.of(GLYPHOSATE_POTASSIUM, "5.5 lb/gal", "4.5 lb ae/gal"),
        // Conversion factors 0.831 and 0.789 of a supplier of reference substances.
        Arguments.of(DICAMBA_DIMETHYLAMINE, "1 lb/gal", "0.831 lb ae/gal"),
        Arguments.of(DICAMBA_ISOPROPYLAMINE, "1 lb/gal", "0.789 lb ae/gal"),
        // Ingredient statements of labels in percent by weight, all from memory.
        Arguments.of(DICAMBA_DIGLYCOLAMINE, "56.8 %", "38.5 %"),
        Arguments.of(D_DIMETHYLAMINE, "46.8 %", "38.9 %"),
        Arguments.of(D_CHOLINE, "55.7 %", "38.0 %"),
        Arguments.of(D_ETHYLHEXYL, "66.2 %", "43.9 %"),
        Arguments.of(CLOPYRALID_OLAMINE, "40.9 %", "31.0 %"),
        Arguments.of(FLUROXYPYR_MEPTYL, "26.2 %", "18.2 %"),
        // Label: 2.762 lb of the dichloride are 2 lb of the cation per gallon; from memory.
        Arguments.of(PARAQUAT_DICHLORIDE, "2.762 lb/gal", "2 lb cation/gal"));
  }

  @ParameterizedTest
  @MethodSource("printed")
  void labelsAndChemistryAgree(Form form, String whole, String counted) {
    Concentration salt = Concentration.parse(whole, Basis.AI);
    Concentration acid = Concentration.parse(counted, Basis.AE);
    double share =
        salt.isLiquid()
            ? acid.kgPerLitre() / salt.kgPerLitre()
            : acid.massShare() / salt.massShare();
    assertThat(share).isCloseTo(form.share(), within(PRINTED * form.share()));
  }

  /** Strengths with the pounds of salt that labels print beside them, from memory. */
  static Stream<Arguments> soldAs() {
    return Stream.of(
        Arguments.of("glyphosate", GLYPHOSATE_POTASSIUM, "4.5 lb ae/gal", "5.5 lb/gal"),
        Arguments.of("paraquat", PARAQUAT_DICHLORIDE, "2 lb cation/gal", "2.762 lb/gal"));
  }

  /**
   * The salt behind such a strength of the starter weighs what the label prints: the strength is
   * really one of the acid or cation, not of the salt.
   */
  @ParameterizedTest
  @MethodSource("soldAs")
  void productsOfTheStarterCountTheAcid(String name, Form form, String counted, String whole) {
    Ingredient ingredient = starter.findIngredient(name).orElseThrow();
    List<Concentration> strengths =
        starter.singles(ingredient.id()).stream()
            .map(p -> p.contents().get(0).concentration())
            .toList();
    Concentration acid = Concentration.parse(counted, ingredient.rateBasis());
    double saltKgPerLitre = Concentration.parse(whole, Basis.AI).kgPerLitre();

    assertThat(strengths)
        .filteredOn(c -> Math.abs(c.kgPerLitre() - acid.kgPerLitre()) < 1e-9)
        .isNotEmpty()
        .allSatisfy(
            c -> {
              assertThat(c.basis()).isEqualTo(acid.basis()).isNotEqualTo(Basis.AI);
              assertThat(c.kgPerLitre() / form.share())
                  .isCloseTo(saltKgPerLitre, within(PRINTED * saltKgPerLitre));
            });
  }

  private static final Map<String, Form> FORMS =
      Map.of(
          "glyphosate", GLYPHOSATE_POTASSIUM,
          "dicamba", DICAMBA_DIGLYCOLAMINE,
          "2-4-d-amine", D_DIMETHYLAMINE,
          "2-4-d-choline", D_CHOLINE,
          "2-4-d-ester", D_ETHYLHEXYL,
          "clopyralid", CLOPYRALID_OLAMINE,
          "fluroxypyr", FLUROXYPYR_MEPTYL,
          "paraquat", PARAQUAT_DICHLORIDE);

  /**
   * What a product holds, salts and esters at their whole weight, fits into it: a gallon of a
   * liquid formulation weighs no more than some 12 lb (common practice, no source).
   */
  @Test
  void everyProductHoldsWhatItClaims() {
    double heaviest = Concentration.parse("12 lb/gal", Basis.AI).kgPerLitre();
    for (Product p : starter.products()) {
      double all = 0;
      for (Product.Content c : p.contents()) {
        Form form = FORMS.get(c.ingredient().value());
        boolean acid = c.concentration().basis() != Basis.AI && form != null;
        double counted =
            c.concentration().isLiquid()
                ? c.concentration().kgPerLitre() / heaviest
                : c.concentration().massShare();
        all += acid ? counted / Objects.requireNonNull(form).share() : counted;
      }
      assertThat(all).as(p.name()).isLessThan(1);
    }
  }
}
