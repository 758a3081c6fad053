package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

class UseFinderTest {

  private static List<Use> find(
      Ingredient active, String formulation, FieldBuilder field, Position.Phase phase) {
    return UseFinder.candidates(active, formulation, field.build(), phase);
  }

  private static FieldBuilder soybean() {
    return FieldBuilder.of("X", "soybean", "2027-05-10");
  }

  private static Ingredient active(UseBuilder... uses) {
    IngredientBuilder b = IngredientBuilder.of("made-up", 15, Movement.SHOOT, Basis.AI);
    for (UseBuilder u : uses) {
      b.use(u);
    }
    return b.build();
  }

  @Test
  void usesOfTheCropAndOfAnyCropInTheirOrder() {
    Ingredient a =
        active(
            UseBuilder.of("soybean", POST),
            UseBuilder.of("corn", PRE),
            UseBuilder.ofAnyCrop(BURNDOWN),
            UseBuilder.of("soybean", PRE));

    List<Use> before = find(a, "SL", soybean(), Position.Phase.BEFORE_EMERGENCE);

    assertThat(before).containsExactly(a.uses().get(2), a.uses().get(3));
    assertThat(find(a, "SL", soybean(), Position.Phase.IN_CROP)).containsExactly(a.uses().get(0));
    assertThat(find(a, "SL", soybean(), Position.Phase.AFTER_HARVEST)).isEmpty();
  }

  @Test
  void aUseOfOneFormulationIsForThatAlone() {
    Ingredient a = active(UseBuilder.of("soybean", PRE).formulations("CS"));

    assertThat(find(a, "CS", soybean(), Position.Phase.BEFORE_EMERGENCE)).hasSize(1);
    assertThat(find(a, "EC", soybean(), Position.Phase.BEFORE_EMERGENCE)).isEmpty();
  }

  @Test
  void statesLimitWhereTheFieldNamesOne() {
    Ingredient a =
        active(
            UseBuilder.of("soybean", PRE).onlyIn("NE", "KS"),
            UseBuilder.of("soybean", PRE).notIn("NE"));

    assertThat(find(a, "SL", soybean().state("ne"), Position.Phase.BEFORE_EMERGENCE))
        .containsExactly(a.uses().get(0));
    assertThat(find(a, "SL", soybean().state("IA"), Position.Phase.BEFORE_EMERGENCE))
        .containsExactly(a.uses().get(1));
    assertThat(find(a, "SL", soybean().stateUnknown(), Position.Phase.BEFORE_EMERGENCE))
        .as("to be asked about")
        .hasSize(2);
  }

  @Test
  void refusedUsesAreReturnedToo() {
    Ingredient a = active(UseBuilder.of("soybean", POST).refused());

    assertThat(find(a, "SL", soybean(), Position.Phase.IN_CROP))
        .extracting(Use::refused)
        .containsExactly(true);
  }

  @Test
  void aUseIsOpenWithItsTraitAndUpToItsRate() {
    Ingredient a =
        active(
            UseBuilder.ofAnyCrop(BURNDOWN).traits().rate("0.75-1.5 lb ai/acre"),
            UseBuilder.of("soybean", POST).traits("glyphosate").rate("0.75-1.13 lb ai/acre"),
            UseBuilder.of("soybean", POST).refused());
    Use burndown = a.uses().get(0);
    Use post = a.uses().get(1);

    assertThat(open(a, soybean().traits("glyphosate"), 1.13)).containsExactly(burndown, post);
    assertThat(open(a, soybean().traits("glyphosate"), 1.2)).containsExactly(burndown);
    assertThat(open(a, soybean().traits(), 1.0)).containsExactly(burndown);
    assertThat(open(a, soybean().traitsUnknown(), 1.0))
        .as("a rule asks for the seed tag")
        .containsExactly(burndown, post);
    assertThat(open(a, soybean().traits("glyphosate"), 1.6)).isEmpty();
  }

  private static List<Use> open(Ingredient active, FieldBuilder field, double lbPerAcre) {
    double kgPerHa = Rate.lbPerAcre(lbPerAcre, active.rateBasis()).kgPerHa();
    return UseFinder.open(active, "SL", field.build(), kgPerHa);
  }
}
