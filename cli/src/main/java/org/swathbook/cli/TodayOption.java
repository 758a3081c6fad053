package org.swathbook.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;

/** The day that a report is for. */
final class TodayOption {
  private final Value<LocalDate> today;

  TodayOption(CommandSpec command) {
    today =
        Value.option(
            command,
            "--today",
            "DATE",
            LocalDate.class,
            new IsoDate(),
            "The day the report is for, 2027-03-01; today by the clock when left out.");
  }

  /** Reads the clock when no day was named; to be called once a run. */
  LocalDate read() {
    return today.value() != null ? today.value() : LocalDate.now(ZoneId.systemDefault());
  }

  /** A date as 2027-03-01 and nothing else. */
  static final class IsoDate implements ITypeConverter<LocalDate> {
    private static final int EARLIEST = 1900;
    private static final int LATEST = 2200;

    @Override
    public LocalDate convert(String text) {
      try {
        LocalDate date = LocalDate.parse(text.strip());
        if (date.getYear() < EARLIEST || date.getYear() > LATEST) {
          throw new TypeConversionException(
              "'" + text + "' is no day of any book; write it as 2027-03-01");
        }
        return date;
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "'" + text + "' is no date of the calendar; write it as 2027-03-01");
      }
    }
  }
}
