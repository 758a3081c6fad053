package org.swathbook.program;

/** An adjuvant by kind with its rate as written, {@code 8.5 lb/100 gal}. */
public record Adjuvant(String kind, String rate) {}
