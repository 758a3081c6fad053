package org.swathbook.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the reference prints of one equation.
 *
 * @param model the class that computes it
 * @param constants numbers of the code itself
 * @param given what else goes in, as from catalog or field; empty for nothing
 * @param source where equation and constants are from; says which are defaults or from memory
 */
public record ModelCard(
    ModelSection section,
    Class<?> model,
    String what,
    String equation,
    List<Constant> constants,
    String given,
    String source) {

  public ModelCard {
    constants = List.copyOf(constants);
  }

  /** A card without constants. */
  public static ModelCard of(
      ModelSection section, Class<?> model, String what, String equation, String source) {
    return new ModelCard(section, model, what, equation, List.of(), "", source);
  }

  /** The same with one more constant. */
  public ModelCard with(String name, double value, String unit) {
    List<Constant> all = new ArrayList<>(constants);
    all.add(new Constant(name, value, unit));
    return new ModelCard(section, model, what, equation, all, given, source);
  }

  /** The same with what else goes in. */
  public ModelCard given(String text) {
    return new ModelCard(section, model, what, equation, constants, text, source);
  }

  /** Constants and what else goes in, in one line. */
  public String parameters() {
    String all =
        Stream.concat(constants.stream().map(Constant::text), Stream.of(given))
            .filter(t -> !t.isEmpty())
            .collect(Collectors.joining("; "));
    return all.isEmpty() ? "–" : all;
  }
}
