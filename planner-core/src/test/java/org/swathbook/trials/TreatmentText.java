package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Catalog;

/**
 * Turns the words of a row into treatments: each a list of passes. Rows of one trial lean on each
 * other ("same actives", "any of the above"), so they are read in the order of the table.
 */
final class TreatmentText {
  private static final Pattern STEPS = Pattern.compile("\\s+fb\\s+");
  private static final Pattern DAYS_AFTER =
      Pattern.compile("((?:\\d+\\s*,\\s*)*\\d+)\\s*(?:or\\s*(\\d+)\\s*)?d\\s+after\\s+failed");
  private static final Pattern FAILED = Pattern.compile("after\\s+failed\\s+(.*)$");

  /** Days between a failed pass and the respray where a row names none: healthy regrowth. */
  private static final double RESPRAY_DAYS = 10;

  /** A dose that is printed without its unit takes the one that ends the row. */
  private static final Pattern BARE_RATE =
      Pattern.compile("(«\\d+»\\s*)(\\d{2,4})(?=\\s*(?:\\+|fb|$|,|\\())");

  private final ActiveNames names;

  /** What was read, and what could not be. */
  record Read(List<List<Spray>> treatments, Set<String> notUnderstood) {
    Read {
      treatments = List.copyOf(treatments);
      notUnderstood = Set.copyOf(notUnderstood);
    }
  }

  TreatmentText(Catalog catalog) {
    this.names = new ActiveNames(catalog);
  }

  /**
   * @param before treatments already read of the same trial, in the order of the table
   */
  Read read(TrialRow row, List<Read> before) {
    String text = names.marked(row.treatment()).replaceAll(";?\\s*rates not in[^;]*", "");
    text = withUnits(text);
    if (row.treatment().toLowerCase(Locale.ROOT).contains("without preplant step")) {
      return withoutFirst(before);
    }
    MixText mixes = new MixText(names);
    Matcher failed = FAILED.matcher(text);
    if (failed.find()) {
      return respray(text, failed, mixes);
    }
    List<Spray.When> whens = whens(row);
    List<List<Spray>> out = new ArrayList<>();
    for (String sequence : sequences(text)) {
      out.addAll(sequence(STEPS.split(sequence), whens, mixes, before));
    }
    return new Read(out, mixes.unknown());
  }

  /** Semicolons part whole sequences, or one more choice of the last step: "; or ...". */
  private static List<String> sequences(String text) {
    List<String> out = new ArrayList<>();
    for (String part : text.split(";")) {
      String p = part.strip();
      if (p.startsWith("or ") && !out.isEmpty()) {
        out.set(out.size() - 1, out.get(out.size() - 1) + ", " + p);
      } else if (!p.isEmpty()) {
        out.add(p);
      }
    }
    return out;
  }

  private List<List<Spray>> sequence(
      String[] steps, List<Spray.When> whens, MixText mixes, List<Read> before) {
    List<List<Spray>> out = List.of(List.of());
    List<List<Spray.Part>> last = List.of();
    for (int s = 0; s < steps.length; s++) {
      String step = steps[s].strip();
      String low = step.toLowerCase(Locale.ROOT);
      Spray.When when =
          WhenText.of(ActiveNames.withoutMarks(step.replaceAll("\\((?:or|\\+)[^)]*\\)", " ")))
              .orElse(whens.get(Math.min(s, whens.size() - 1)));
      when = closer(when, whens, s);
      List<List<Spray.Part>> choices;
      if (low.contains("any of the above")) {
        choices = firstMixes(before);
      } else if (low.startsWith("same post") || low.equals("same")) {
        choices = last;
      } else if (low.contains("same actives")) {
        choices = scaled(firstMixes(before), low);
      } else if (!names.isIn(outsideBrackets(step)) && low.contains("x ") && !last.isEmpty()) {
        choices = withExtras(scaled(last, low), mixes.mixes("0x " + step));
      } else if (s > 0 && names.isIn(step) && low.matches("^\\d.*x\\b.*")) {
        choices = withExtras(scaled(last, low), mixes.mixes(step.replaceAll("[\\d.]+x", "")));
      } else {
        choices = mixes.mixes(step);
      }
      last = choices.isEmpty() ? last : choices;
      out = joined(out, choices, when);
    }
    return out.stream().filter(t -> !t.isEmpty()).toList();
  }

  private static String outsideBrackets(String step) {
    return step.replaceAll("\\([^)]*\\)", " ");
  }

  private static List<List<Spray>> joined(
      List<List<Spray>> so, List<List<Spray.Part>> choices, Spray.When when) {
    if (choices.isEmpty()) {
      return so;
    }
    List<List<Spray>> out = new ArrayList<>();
    for (List<Spray> done : so) {
      for (List<Spray.Part> choice : choices) {
        List<Spray> next = new ArrayList<>(done);
        next.add(new Spray(choice, when));
        out.add(List.copyOf(next));
      }
    }
    return out;
  }

  /** What the column of times says of the same step: a day, a height. */
  private static Spray.When closer(Spray.When when, List<Spray.When> whens, int step) {
    if (step < whens.size() && whens.get(step).point() == when.point()) {
      Spray.When more = whens.get(step);
      return new Spray.When(
          when.point(),
          when.daysAfterPlanting().isPresent()
              ? when.daysAfterPlanting()
              : more.daysAfterPlanting(),
          when.weedCm().isPresent() ? when.weedCm() : more.weedCm(),
          when.daysAfterLast());
    }
    return when;
  }

  private static List<List<Spray.Part>> firstMixes(List<Read> before) {
    List<List<Spray.Part>> out = new ArrayList<>();
    for (Read read : before) {
      read.treatments().stream().filter(t -> t.size() == 1).forEach(t -> out.add(t.get(0).parts()));
    }
    return out;
  }

  private static List<List<Spray.Part>> scaled(List<List<Spray.Part>> mixes, String text) {
    Matcher m = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*x\\b").matcher(text);
    double share = m.find() ? Double.parseDouble(m.group(1)) : 1;
    return mixes.stream()
        .map(mix -> mix.stream().map(p -> new Spray.Part(p.active(), p.kgPerHa(), share)).toList())
        .toList();
  }

  private static List<List<Spray.Part>> withExtras(
      List<List<Spray.Part>> mixes, List<List<Spray.Part>> extras) {
    if (extras.isEmpty()) {
      return mixes;
    }
    List<List<Spray.Part>> out = new ArrayList<>();
    for (List<Spray.Part> mix : mixes) {
      List<Spray.Part> all = new ArrayList<>(mix);
      extras.get(0).forEach(p -> all.add(new Spray.Part(p.active(), p.kgPerHa(), 1)));
      out.add(all);
    }
    return out;
  }

  private static Read withoutFirst(List<Read> before) {
    List<List<Spray>> out = new ArrayList<>();
    for (Read read : before) {
      read.treatments().stream()
          .filter(t -> t.size() > 2)
          .forEach(t -> out.add(t.subList(1, t.size())));
    }
    return new Read(out, Set.of());
  }

  private Read respray(String text, Matcher failed, MixText mixes) {
    OptionalDouble height = WhenText.heightCm(ActiveNames.withoutMarks(failed.group(1)));
    List<Double> days = new ArrayList<>();
    Matcher after = DAYS_AFTER.matcher(text);
    if (after.find()) {
      for (String day : after.group(1).split(",")) {
        days.add(Double.parseDouble(day.strip()));
      }
      if (after.group(2) != null) {
        days.add(Double.parseDouble(after.group(2)));
      }
    }
    String second = after.reset().find() ? text.substring(0, after.start()) : text;
    second = FAILED.matcher(second).replaceAll("");
    List<List<Spray>> out = new ArrayList<>();
    Spray.When first = Spray.When.at(Spray.Point.POST);
    first = height.isPresent() ? first.height(height.getAsDouble()) : first;
    for (List<Spray.Part> one : mixes.mixes(failed.group(1))) {
      for (List<Spray.Part> other : mixes.mixes(second)) {
        for (double d : days.isEmpty() ? List.of(RESPRAY_DAYS) : days) {
          out.add(
              List.of(
                  new Spray(one, first),
                  new Spray(other, Spray.When.at(Spray.Point.RESPRAY).afterLast(d))));
        }
      }
    }
    return new Read(out, new TreeSet<>(mixes.unknown()));
  }

  /** "glyphosate 900 fb glyphosate 900 g ae/ha": the unit stands once. */
  private static String withUnits(String text) {
    Matcher unit =
        Pattern.compile("(k?g|lb|oz)\\s*(ai|ae)?\\s*/\\s*(ha|ac|acre|A)\\b").matcher(text);
    String last = null;
    while (unit.find()) {
      last = unit.group();
    }
    return last == null
        ? text
        : BARE_RATE.matcher(text).replaceAll("$1$2 " + Matcher.quoteReplacement(last));
  }

  /** Times of the steps from the column of times, else from the kind of program. */
  private static List<Spray.When> whens(TrialRow row) {
    List<Spray.When> out = new ArrayList<>();
    for (String column : List.of(row.timing(), row.program())) {
      out.clear();
      for (String step : STEPS.split(column)) {
        Optional<Spray.When> when = WhenText.of(step.replace('/', ' '));
        when.ifPresent(out::add);
      }
      if (!out.isEmpty()) {
        return out;
      }
    }
    return List.of(Spray.When.at(Spray.Point.POST));
  }
}
