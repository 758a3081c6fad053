package org.swathbook.catalog.file;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.StateLimit;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;

/** Reads in which states, years and until which date a use is registered. */
final class RegistrationReader {
  private static final Pattern YEARS = Pattern.compile("(\\d{4})(?:\\s*-\\s*(\\d{4}))?");
  private static final Pattern STATE = Pattern.compile("[A-Z]{2}");

  private final Entry entry;

  RegistrationReader(Entry entry) {
    this.entry = entry;
  }

  Registration read(MapReader use, Place place) {
    entry.keepSources(use, place, "state");
    return new Registration(
        use.findMap("state", "state: {only: [NE, KS]}")
            .map(RegistrationReader::states)
            .orElse(StateLimit.ANYWHERE),
        entry.stated(
            use,
            "labelYears",
            place,
            "years of registration",
            RegistrationReader::years,
            "2026-2027"),
        entry.stated(use, "cutoff", place, "last date", this::cutoffs));
  }

  private static StateLimit states(MapReader m) {
    int before = m.problems().count();
    StateLimit limit = new StateLimit(states(m, "only"), states(m, "refused"));
    if (limit.equals(StateLimit.ANYWHERE) && m.problems().count() == before) {
      m.problems().add(m.mark(), "no state is named", "write '{only: [NE, KS]}'");
    }
    m.done();
    return limit;
  }

  private static Set<String> states(MapReader m, String key) {
    return new LinkedHashSet<>(m.findAll(key, RegistrationReader::state, "NE"));
  }

  private static String state(String text) {
    if (!STATE.matcher(text.strip()).matches()) {
      throw new MeasureException("'" + text + "' is no state; write two capitals, as NE");
    }
    return text.strip();
  }

  private static Registration.LabelYears years(String text) {
    Matcher m = YEARS.matcher(text.strip());
    if (!m.matches()) {
      throw new MeasureException("'" + text + "' names no years; write for example '2026-2027'");
    }
    int first = Integer.parseInt(m.group(1));
    int last = m.group(2) == null ? first : Integer.parseInt(m.group(2));
    if (last < first) {
      throw new MeasureException("'" + text + "' runs backwards; write the earlier year first");
    }
    return new Registration.LabelYears(first, last);
  }

  private Optional<List<Registration.Cutoff>> cutoffs(Node node) {
    if (node instanceof ScalarNode) {
      return MapReader.scalar(node, Texts::monthDay, "06-30", entry.problems())
          .map(d -> List.of(new Registration.Cutoff(Set.of(), d)));
    }
    return entry.rows(node, "- {date: 06-30}", RegistrationReader::cutoff);
  }

  private static Optional<Registration.Cutoff> cutoff(MapReader m) {
    Set<String> states = states(m, "states");
    m.require("date", "06-30");
    return m.find("date", Texts::monthDay, "06-30")
        .map(date -> new Registration.Cutoff(states, date));
  }
}
