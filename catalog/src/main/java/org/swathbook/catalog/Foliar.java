package org.swathbook.catalog;

/** Activity through leaves. */
public record Foliar(Stated<Double> rainfastHours) {}
