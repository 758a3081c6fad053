package org.swathbook.cli.report;

import java.util.List;

/** What stands on every report. */
public final class Cautions {

  /** One paragraph each, in the order in which they are shown. */
  public static final List<String> ALL =
      List.of(
          "The label is the law. This report is no label and permits nothing: check every product,"
              + " rate, crop, stage, interval and partner against the current label of the product"
              + " in hand.",
          "State and local rules may be stricter than the label; they hold too.",
          "Only trained applicators may apply, and only certified ones where a label or the law"
              + " says so. Herbicides can harm people, crops, neighbors and water.",
          "Values of the catalog rest partly on memory and may be wrong or out of date; models and"
              + " past weather tell what is likely, not what will be.");

  private Cautions() {}
}
