package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.catalog.ProtectiveItem.APRON;
import static org.swathbook.catalog.ProtectiveItem.CHEMICAL_RESISTANT_GLOVES;
import static org.swathbook.catalog.ProtectiveItem.EYEWEAR;
import static org.swathbook.catalog.ProtectiveItem.FACE_SHIELD;
import static org.swathbook.catalog.ProtectiveItem.LONG_SLEEVES;
import static org.swathbook.catalog.ProtectiveItem.RESPIRATOR;
import static org.swathbook.catalog.ProtectiveItem.SHOES_AND_SOCKS;
import static org.swathbook.catalog.ProtectiveItem.WATERPROOF_GLOVES;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Protection;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.testing.MixCase;

/**
 * Labels of mixtures tell to follow the most restrictive of their partners (common practice, no
 * source).
 */
class ProtectiveEquipmentTest {
  private static final Source SOURCE = new Source("default, test case");

  private static Dose dose(String product, Stated<Protection> protection) {
    Product p = MixCase.CATALOG.findProduct(product).orElseThrow();
    Product said =
        new Product(
            p.id(),
            p.name(),
            p.contents(),
            p.formulation(),
            p.spoken(),
            p.step(),
            p.packageSize(),
            p.label(),
            p.order(),
            protection,
            p.note(),
            p.source(),
            p.sources());
    return Doses.ofProduct(MixCase.CATALOG, said, Rate.parse("32 fl oz/acre"));
  }

  private static Stated<Protection> worn(Set<ProtectiveItem> handlers, ProtectiveItem... mixing) {
    return Stated.value(new Protection(handlers, Set.copyOf(Arrays.asList(mixing))), SOURCE);
  }

  @Test
  void ofEachPartOfTheBodyTheMostProtectiveGoes() {
    ProtectiveEquipment tank =
        ProtectiveEquipment.of(
            List.of(
                dose("glyphosate-4.5sl", worn(Set.of(LONG_SLEEVES, WATERPROOF_GLOVES, RESPIRATOR))),
                dose("atrazine-4sc", worn(Set.of(SHOES_AND_SOCKS, CHEMICAL_RESISTANT_GLOVES)))));

    assertThat(tank.handlers())
        .containsExactly(LONG_SLEEVES, SHOES_AND_SOCKS, CHEMICAL_RESISTANT_GLOVES, RESPIRATOR);
    assertThat(tank.mixing()).isEmpty();
    assertThat(tank.unknown()).isEmpty();
  }

  /** A face shield of one label covers the eyewear of another, and only while mixing. */
  @Test
  void whileMixingOnlyWhatGoesBeyondIsNamed() {
    ProtectiveEquipment tank =
        ProtectiveEquipment.of(
            List.of(
                dose("glyphosate-4.5sl", worn(Set.of(EYEWEAR), FACE_SHIELD, APRON)),
                dose("atrazine-4sc", worn(Set.of(CHEMICAL_RESISTANT_GLOVES), WATERPROOF_GLOVES))));

    assertThat(tank.handlers()).containsExactly(CHEMICAL_RESISTANT_GLOVES, EYEWEAR);
    assertThat(tank.mixing()).containsExactly(FACE_SHIELD, APRON);
  }

  @Test
  void whatNobodyReadIsNeverNothing() {
    ProtectiveEquipment tank =
        ProtectiveEquipment.of(
            List.of(
                dose("glyphosate-4.5sl", Stated.none(SOURCE)),
                dose("atrazine-4sc", Stated.unknown("protective equipment"))));

    assertThat(tank.stated()).extracting(Object::toString).containsExactly("glyphosate-4.5sl");
    assertThat(tank.unknown()).extracting(Object::toString).containsExactly("atrazine-4sc");
    assertThat(tank.handlers()).isEmpty();
  }
}
