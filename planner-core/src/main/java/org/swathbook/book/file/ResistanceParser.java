package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.book.Resistance;
import org.swathbook.book.Resistance.Kept;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Texts;

/** Grammar of the columns that say what a weed resists. */
final class ResistanceParser {
  private static final Pattern ENTRY =
      Pattern.compile("(.+?)\\s*:\\s*([^%]*%)\\s*(.*)", Pattern.DOTALL);
  private static final Set<String> STATUSES = Set.of("confirmed", "assumed", "suspected");
  private static final Pattern STATUS_FIRST = Pattern.compile("(\\S+)(.*)", Pattern.DOTALL);
  private static final Set<String> KEPT_WORDS = Set.of("metabolic", "target-site", "keeps");
  private static final String EXAMPLE = "9:85 % confirmed; dicamba:30 % suspected";

  /** Combinations of entries double with each of them. */
  private static final int MOST_ENTRIES = 6;

  private final Names names;

  ResistanceParser(Names names) {
    this.names = names;
  }

  /** The short form's sites, {@code 2;9}; old numbers mean the current ones. */
  static Set<Site> sites(String text) {
    Set<Site> out = new LinkedHashSet<>();
    for (String part : text.split(";")) {
      if (!part.isBlank() && !out.add(site(part.strip()))) {
        throw new MeasureException(
            "the site " + part.strip() + " stands here twice; keep one of the two");
      }
    }
    if (out.isEmpty()) {
      throw new MeasureException("'" + text + "' names no site; write as 2;9");
    }
    return out;
  }

  private static Site site(String text) {
    return Site.find(text)
        .orElseThrow(
            () ->
                new MeasureException(
                    "'" + text + "' is no site of action; write its number, as 9 or 2;9"));
  }

  /** A share above zero; {@code 90 %}. */
  static double share(String text) {
    double share = Texts.share(text);
    if (share == 0) {
      throw new MeasureException("'" + text + "' is no plant; leave out what no plant resists");
    }
    return share;
  }

  /**
   * Independent entries: {@code 9:85 % confirmed; 2:95 % assumed; dicamba:30 % suspected}, each
   * with what its plants keep of the control (see {@link KeptParser}).
   */
  List<Resistance> entries(String text) {
    List<Resistance> out = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        Resistance r = entry(part.strip());
        String what =
            r.site().map(Site::toString).orElseGet(() -> r.ingredient().orElseThrow().value());
        if (!seen.add(what)) {
          throw new MeasureException(
              "'" + what + "' stands here twice; keep one entry for each site or ingredient");
        }
        out.add(r);
      }
    }
    if (out.size() > MOST_ENTRIES) {
      throw new MeasureException(
          out.size()
              + " independent entries make too many kinds of plants; write at most "
              + MOST_ENTRIES
              + ", or the sites that go together in resistantSites");
    }
    return out;
  }

  private Resistance entry(String text) {
    Matcher m = ENTRY.matcher(text);
    if (!m.matches()) {
      throw new MeasureException(
          "'"
              + text
              + "' is no resistance; write site or ingredient, share and status, as '"
              + EXAMPLE
              + "'");
    }
    String what = m.group(1);
    double share = share(m.group(2));
    Matcher tail = STATUS_FIRST.matcher(m.group(3).strip());
    String status = "";
    String rest = m.group(3);
    if (tail.matches() && !KEPT_WORDS.contains(tail.group(1).toLowerCase(Locale.ROOT))) {
      status = tail.group(1).toLowerCase(Locale.ROOT);
      rest = tail.group(2);
      if (!STATUSES.contains(status)) {
        throw new MeasureException(
            "'" + tail.group(1) + "' is no status; write confirmed, assumed or suspected");
      }
    }
    Optional<Kept> kept = KeptParser.parse(rest);
    Optional<Site> site = what.matches("\\d+") ? Optional.of(site(what)) : Optional.empty();
    Optional<IngredientId> ingredient =
        site.isPresent() ? Optional.empty() : Optional.of(names.ingredient(what).id());
    return new Resistance(site, ingredient, share, status, kept);
  }
}
