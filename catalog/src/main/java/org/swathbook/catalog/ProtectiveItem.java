package org.swathbook.catalog;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * What labels tell people to wear, as the standard for workers' protection names it (40 CFR
 * 170.507, from memory). Of two items for one part of the body the later one protects more and
 * stands for the earlier.
 */
public enum ProtectiveItem {
  LONG_SLEEVES("long-sleeves", "long-sleeved shirt and long pants", Part.BODY),
  COVERALLS("coveralls", "coveralls over shirt and pants", Part.BODY),
  CHEMICAL_RESISTANT_SUIT("chemical-resistant-suit", "chemical-resistant suit", Part.BODY),
  SHOES_AND_SOCKS("shoes-and-socks", "shoes plus socks", Part.FEET),
  CHEMICAL_RESISTANT_FOOTWEAR(
      "chemical-resistant-footwear", "chemical-resistant footwear plus socks", Part.FEET),
  WATERPROOF_GLOVES("waterproof-gloves", "waterproof gloves", Part.HANDS),
  CHEMICAL_RESISTANT_GLOVES(
      "chemical-resistant-gloves",
      "chemical-resistant gloves of a material that the label lists",
      Part.HANDS),
  EYEWEAR("eyewear", "protective eyewear", Part.EYES),
  GOGGLES("goggles", "goggles", Part.EYES),
  FACE_SHIELD("face-shield", "face shield", Part.EYES),
  APRON("apron", "chemical-resistant apron", Part.FRONT),
  HEADGEAR("headgear", "chemical-resistant headgear", Part.HEAD),
  FILTERING_MASK("filtering-mask", "filtering facepiece against particles", Part.BREATH),
  RESPIRATOR("respirator", "respirator of the type that the label names", Part.BREATH);

  /** Where it is worn. */
  private enum Part {
    BODY,
    FEET,
    HANDS,
    EYES,
    FRONT,
    HEAD,
    BREATH
  }

  private final String spelling;
  private final String words;
  private final Part part;

  ProtectiveItem(String spelling, String words, Part part) {
    this.spelling = spelling;
    this.words = words;
    this.part = part;
  }

  /** As in a catalog. */
  public String spelling() {
    return spelling;
  }

  /** As people say it. */
  public String words() {
    return words;
  }

  /** Of each part of the body what protects it most, in the order of this list. */
  public static Set<ProtectiveItem> strictest(Collection<ProtectiveItem> items) {
    Map<Part, ProtectiveItem> best = new EnumMap<>(Part.class);
    for (ProtectiveItem i : items) {
      best.merge(i.part, i, (a, b) -> a.compareTo(b) >= 0 ? a : b);
    }
    return Ordered.set(best.values().stream().sorted().toList());
  }

  @Override
  public String toString() {
    return spelling;
  }
}
