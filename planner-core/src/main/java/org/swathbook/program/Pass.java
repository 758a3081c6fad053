package org.swathbook.program;

/** A trip of the sprayer. */
public record Pass(Anchor at, Mix mix) {}
