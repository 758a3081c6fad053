package org.swathbook.escapes;

import org.swathbook.catalog.Ingredient;

/** An active that would work on the survivors and may or should not be sprayed, and why. */
public record RefusedRespray(Ingredient active, String why) {}
