package org.swathbook.tank;

import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Terms;

/**
 * An active in a tank.
 *
 * @param terms of the use that it is made under, else of the ingredient
 */
public record Partner(Ingredient ingredient, Terms terms) {}
