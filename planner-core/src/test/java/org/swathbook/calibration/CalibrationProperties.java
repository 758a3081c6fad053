package org.swathbook.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The equations belong together whatever the figures. */
class CalibrationProperties {

  @Property
  void flowVolumeAndSpeedAreOneEquation(
      @ForAll @DoubleRange(min = 1, max = 60) double gpa,
      @ForAll @DoubleRange(min = 1, max = 25) double mph,
      @ForAll @DoubleRange(min = 5, max = 240) double widthIn) {
    double flow = NozzleFlow.gallonsPerMinute(gpa, mph, widthIn);

    assertThat(NozzleFlow.gallonsPerAcre(flow, mph, widthIn)).isEqualTo(gpa, within(1e-9 * gpa));
    assertThat(NozzleFlow.mph(flow, gpa, widthIn)).isEqualTo(mph, within(1e-9 * mph));
  }

  /** Ounces caught over a 128th of an acre are gal/acre, at whatever speed. */
  @Property
  void ouncesAreGallons(
      @ForAll @DoubleRange(min = 1, max = 60) double gpa,
      @ForAll @DoubleRange(min = 1, max = 25) double mph,
      @ForAll @DoubleRange(min = 5, max = 240) double widthIn) {
    double feet = CatchCourse.feet(widthIn);
    double minutes = GroundSpeed.seconds(feet, mph) / 60;
    double caught =
        NozzleFlow.ouncesPerMinute(NozzleFlow.gallonsPerMinute(gpa, mph, widthIn)) * minutes;

    assertThat(caught).isEqualTo(gpa, within(1e-9 * gpa));
    assertThat(GroundSpeed.mph(feet, minutes * 60)).isEqualTo(mph, within(1e-9 * mph));
  }

  /** Set to the pressure or the speed that it says, the sprayer gives what is wanted. */
  @Property
  void whatItSaysBringsWhatIsWanted(
      @ForAll @DoubleRange(min = 5, max = 30) double wanted,
      @ForAll @DoubleRange(min = 5, max = 30) double caught,
      @ForAll @DoubleRange(min = 15, max = 90) double psi,
      @ForAll @DoubleRange(min = 3, max = 20) double mph) {
    Calibration c =
        new Calibration(
            20,
            OptionalDouble.of(mph),
            CatchCourse.feet(20),
            OptionalDouble.of(wanted),
            new Calibration.Caught(caught),
            OptionalDouble.of(psi),
            OptionalDouble.empty());
    double flow = c.measuredFlow().orElseThrow();
    double set = NozzlePressure.gallonsPerMinute(flow, psi, c.psiForWanted().orElseThrow());

    assertThat(NozzleFlow.gallonsPerAcre(set, mph, 20)).isEqualTo(wanted, within(1e-9 * wanted));
    assertThat(NozzleFlow.gallonsPerAcre(flow, c.mphForWanted().orElseThrow(), 20))
        .isEqualTo(wanted, within(1e-9 * wanted));
    assertThat(c.off().orElseThrow()).isEqualTo(caught / wanted - 1, within(1e-9));
  }

  /** What is not said makes nothing up. */
  @Property
  void withoutASpeedThereIsNoFlow(@ForAll @DoubleRange(min = 5, max = 30) double caught) {
    Calibration c =
        new Calibration(
            20,
            OptionalDouble.empty(),
            CatchCourse.feet(20),
            OptionalDouble.empty(),
            new Calibration.Caught(caught),
            OptionalDouble.of(40),
            OptionalDouble.empty());

    assertThat(c.measuredVolume().orElseThrow()).isEqualTo(caught, within(1e-9 * caught));
    assertThat(c.measuredFlow()).isEmpty();
    assertThat(c.wantedFlow()).isEmpty();
    assertThat(c.off()).isEmpty();
    assertThat(c.psiForWanted()).isEmpty();
    assertThat(c.mphForWanted()).isEmpty();
  }
}
