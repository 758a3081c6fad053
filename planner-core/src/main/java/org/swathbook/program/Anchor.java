package org.swathbook.program;

import java.time.LocalDate;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Numbers;

/** When a pass is to be made. */
public sealed interface Anchor {

  /** On a date of the book's season. */
  record OnDate(LocalDate date) implements Anchor {
    @Override
    public String toString() {
      return date.toString();
    }
  }

  /** Made on that day, as the journal has it: the same day in every year, whatever came of it. */
  record Made(LocalDate date) implements Anchor {
    @Override
    public String toString() {
      return date.toString();
    }
  }

  /** So many days from planting, negative before it. */
  record FromPlanting(int days) implements Anchor {
    @Override
    public String toString() {
      return days == 0
          ? "planting"
          : Math.abs(days) + " days " + (days < 0 ? "before" : "after") + " planting";
    }
  }

  /** When the crop reaches a stage. */
  record AtStage(String stage) implements Anchor {
    @Override
    public String toString() {
      return "stage " + stage;
    }
  }

  /** When the tallest standing plants of a weed reach a height. */
  record WhenWeedIs(WeedId weed, double heightCm) implements Anchor {
    @Override
    public String toString() {
      return "when " + weed + " is " + Numbers.decimals(Inches.ofCm(heightCm), 1) + " in";
    }
  }
}
