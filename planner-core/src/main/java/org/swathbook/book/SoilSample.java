package org.swathbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;

/**
 * One soil of a field: a single texture, organic matter and pH, with what is known of slope and
 * residue. A field that names several values has a sample for every combination, and the strictest
 * answer governs.
 */
public record SoilSample(
    Optional<SoilTexture> texture,
    OptionalDouble organicMatterPct,
    OptionalDouble soilPh,
    Optional<Boolean> erodible,
    OptionalDouble residuePct) {

  // Written out, as in every key that is compared at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SoilSample o
        && texture.equals(o.texture)
        && organicMatterPct.equals(o.organicMatterPct)
        && soilPh.equals(o.soilPh)
        && erodible.equals(o.erodible)
        && residuePct.equals(o.residuePct);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * texture.hashCode() + organicMatterPct.hashCode()) + soilPh.hashCode();
  }

  /** Whether a condition holds: yes, no, or unknown for want of a fact that it needs. */
  public enum Fit {
    YES,
    NO,
    UNKNOWN
  }

  /** All samples of a field, at least one. */
  public static List<SoilSample> of(Field field) {
    List<SoilSample> out = new ArrayList<>();
    for (Optional<SoilTexture> t : orEmpty(field.soilTextures())) {
      for (Optional<Double> om : orEmpty(field.organicMatterPct())) {
        for (Optional<Double> ph : orEmpty(field.soilPh())) {
          out.add(new SoilSample(t, box(om), box(ph), field.erodible(), field.residuePct()));
        }
      }
    }
    return out;
  }

  private static <T> List<Optional<T>> orEmpty(List<T> values) {
    if (values.isEmpty()) {
      return List.of(Optional.empty());
    }
    List<Optional<T>> out = new ArrayList<>(values.size());
    for (T value : values) {
      out.add(Optional.of(value));
    }
    return out;
  }

  private static OptionalDouble box(Optional<Double> d) {
    return d.isPresent() ? OptionalDouble.of(d.get()) : OptionalDouble.empty();
  }

  /**
   * Whether the condition holds here. One part that fails decides, even when another is unknown.
   */
  public Fit fits(SoilCondition c) {
    Fit[] parts = {
      c.textures().isEmpty()
          ? Fit.YES
          : texture.map(t -> yes(c.textures().contains(t))).orElse(Fit.UNKNOWN),
      within(c.organicMatterPct(), organicMatterPct),
      within(c.soilPh(), soilPh),
      c.erodible().isEmpty()
          ? Fit.YES
          : erodible.map(e -> yes(e.equals(c.erodible().get()))).orElse(Fit.UNKNOWN),
      within(c.residuePct(), residuePct)
    };
    Fit all = Fit.YES;
    for (Fit f : parts) {
      if (f == Fit.NO) {
        return Fit.NO;
      }
      if (f == Fit.UNKNOWN) {
        all = Fit.UNKNOWN;
      }
    }
    return all;
  }

  private static Fit within(Optional<Limit> limit, OptionalDouble value) {
    if (limit.isEmpty()) {
      return Fit.YES;
    }
    return value.isEmpty() ? Fit.UNKNOWN : yes(limit.get().allows(value.getAsDouble()));
  }

  private static Fit yes(boolean b) {
    return b ? Fit.YES : Fit.NO;
  }

  /** {@code sandy loam, organic matter 1.1 %, pH 7.7}. */
  @Override
  public String toString() {
    List<String> parts = new ArrayList<>();
    texture.ifPresent(t -> parts.add(t.spelling()));
    organicMatterPct.ifPresent(o -> parts.add("organic matter " + o + " %"));
    soilPh.ifPresent(p -> parts.add("pH " + p));
    return parts.isEmpty() ? "unknown soil" : String.join(", ", parts);
  }
}
