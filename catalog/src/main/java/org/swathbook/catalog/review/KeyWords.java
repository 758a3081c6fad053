package org.swathbook.catalog.review;

import java.util.Map;

/** The keys of an entry in words, for reports. */
public final class KeyWords {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("rateBasis", "basis of its rates"),
          Map.entry("capGroup", "shares caps with"),
          Map.entry("usesComplete", "no other crop is labelled"),
          Map.entry("soil", "soil activity"),
          Map.entry("soil.residual", "residual, low rate"),
          Map.entry("soil.residualHigh", "residual, high rate"),
          Map.entry("soil.halfLife", "half-life in soil"),
          Map.entry("soil.activatingRain", "activating rain"),
          Map.entry("foliar", "foliar activity"),
          Map.entry("incorporate", "incorporation"),
          Map.entry("reentry", "re-entry interval"),
          Map.entry("restrictedUse", "restricted use"),
          Map.entry("carrier", "spray volume"),
          Map.entry("carrier.min", "least spray volume"),
          Map.entry("carrier.advised", "advised spray volume"),
          Map.entry("carrier.max", "highest spray volume"),
          Map.entry("carrier.waterPh", "pH of the water"),
          Map.entry("carrier.fertilizer", "fertilizer as carrier"),
          Map.entry("setback", "distances from water"),
          Map.entry("tank.adjuvantNeeded", "adjuvants needed"),
          Map.entry("tank.adjuvantRefused", "adjuvants refused"),
          Map.entry("tank.partners", "tank partners"),
          Map.entry("tank.droplets", "droplets"),
          Map.entry("tank.nozzles", "nozzles"),
          Map.entry("tank.insecticides", "insecticides"),
          Map.entry("tank.jarTest", "jar test"),
          Map.entry("tank.cleanOut", "clean-out"),
          Map.entry("day.wind", "wind"),
          Map.entry("day.temperature", "temperature"),
          Map.entry("day.inversion", "inversion"),
          Map.entry("day.hours", "hours of the day"),
          Map.entry("day.runoffRain", "no runoff rain within"),
          Map.entry("day.buffer", "downwind buffer"),
          Map.entry("refusedUse", "refused by the label"),
          Map.entry("timing", "window"),
          Map.entry("weedRate", "least rate for a weed"),
          Map.entry("order", "order of mixing"),
          Map.entry("cropHeight", "crop height"),
          Map.entry("plantingInterval", "days before planting"),
          Map.entry("soilPh", "soil pH"),
          Map.entry("cap", "most in a period"),
          Map.entry("applications", "most applications"),
          Map.entry("repeat", "days between applications"),
          Map.entry("weedHeight", "tallest weeds"),
          Map.entry("labelYears", "registered in"),
          Map.entry("cutoff", "last date"),
          Map.entry("protection", "protective equipment"));

  private KeyWords() {}

  /** The words for a key, or the key itself where it is plain enough. */
  public static String of(String key) {
    String words = WORDS.get(key);
    if (words != null) {
      return words;
    }
    int dot = key.indexOf('.');
    if (dot < 0) {
      return key;
    }
    String rest = key.substring(dot + 1);
    return switch (key.substring(0, dot)) {
      case "intervals" -> "days before " + rest;
      case "rotation" -> "next crop " + rest;
      case "setback" -> "distance from " + rest;
      case "competition" -> "competition in " + rest;
      case "heights" -> "crop height at " + rest;
      default -> key.substring(0, dot) + ", " + rest;
    };
  }
}
