package org.swathbook.plan.choice;

import org.swathbook.catalog.IngredientId;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;

/**
 * A product at a practical rate that the planner may put into a tank.
 *
 * @param index its place in the problem's list
 * @param ingredient its active; a tank holds an active once
 * @param cost of the dose on one acre
 */
public record DoseOption(int index, Dose dose, IngredientId ingredient, Money cost) {}
