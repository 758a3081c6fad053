package org.swathbook.source;

/** The text of one cell, stripped of blanks around it, and its place. */
public record Cell(Mark mark, String text) {}
