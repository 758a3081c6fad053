package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Holds the figures of a page against the JSON document of the same command. What a template marks
 * with {@code data-json} names the values of the document by JSON Pointers (RFC 6901), one for each
 * figure and date of the words, in their order.
 */
final class PageFigures {
  private static final Pattern MARKED =
      Pattern.compile("<(\\w+)([^<>]*) data-json=\"([^\"]+)\"[^<>]*>(.*?)</\\1>", Pattern.DOTALL);

  private static final String MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec";

  /** Dates, and numbers that are no part of a name as 2,4-D or ND-1. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "\\b(\\d{1,2}) ("
              + MONTHS.replace(' ', '|')
              + ")(?: (\\d{4}))?\\b"
              + "|(?<![\\w.,-])([-+]?\\d{1,3}(?:,\\d{3})++(?:\\.\\d+)?+|[-+]?\\d++(?:\\.\\d+)?+)"
              + "(?![-\\w]|,\\d|\\.\\d)(?= days? before)?+");

  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d\\d)-(\\d\\d)");

  private final JsonNode json;
  private final Set<String> shown = new TreeSet<>();
  private final List<String> wrong = new ArrayList<>();

  private PageFigures(JsonNode json) {
    this.json = json;
  }

  /** What differs, one line each, with the pointers that the page shows. */
  record Compared(List<String> wrong, Set<String> shown) {}

  static Compared of(String page, JsonNode json) {
    PageFigures figures = new PageFigures(json);
    Matcher m = MARKED.matcher(page);
    while (m.find()) {
      figures.compare(WrittenPage.words("<body>" + m.group(4)).strip(), m.group(3));
    }
    assertThat(figures.shown).as("figures that are marked").isNotEmpty();
    return new Compared(figures.wrong, figures.shown);
  }

  private static final Pattern BARE_DRAWN =
      Pattern.compile("<(text|title)((?: (?!data-json)[\\w-]+=\"[^\"]*\")*)>([^<]*)</\\1>");

  /**
   * Words of pictures, those shown under the pointer too, that have a figure and name no value of
   * the document.
   */
  static Set<String> bareInPictures(String page) {
    Set<String> out = new TreeSet<>();
    Matcher m = BARE_DRAWN.matcher(page.substring(page.indexOf("<body")));
    while (m.find()) {
      if (FIGURE.matcher(m.group(3)).find()) {
        out.add(m.group(2).replaceAll("^.*class=\"([^\"]*)\".*$", "$1: ") + m.group(3));
      }
    }
    return out;
  }

  private void compare(String words, String marks) {
    List<String> pointers = new ArrayList<>();
    String rest = words;
    for (String pointer : marks.split(" ")) {
      JsonNode node = pointer.startsWith("/") ? json.at(plain(pointer)) : json;
      if (node.isMissingNode() && !isReckoned(pointer)) {
        wrong.add("'" + words + "': the document has no " + pointer);
      } else if (node.isTextual() && !ISO.matcher(node.asText()).matches()) {
        String text = node.asText().replaceAll("\\s+", " ");
        if (!rest.contains(text)) {
          wrong.add("'" + words + "' is without '" + text + "' of " + pointer);
        }
        rest = rest.replaceFirst(Pattern.quote(text), "");
        shown.add(pointer);
      } else {
        pointers.add(pointer);
      }
    }
    List<Matcher> found = new ArrayList<>();
    for (Matcher m = FIGURE.matcher(rest); m.find(); ) {
      Matcher one = FIGURE.matcher(rest);
      one.find(m.start());
      found.add(one);
    }
    if (found.size() != pointers.size()) {
      wrong.add("'" + words + "' has " + found.size() + " figures for " + pointers);
      return;
    }
    for (int i = 0; i < pointers.size(); i++) {
      String pointer = pointers.get(i);
      if (!pointer.equals("-")) {
        if (!isSame(found.get(i), pointer, rest)) {
          wrong.add("'" + words + "': " + found.get(i).group() + " is not " + pointer);
        }
        shown.addAll(Arrays.asList(plain(pointer).split("[+*]|-(?=/)")));
      }
    }
  }

  private static boolean isReckoned(String pointer) {
    return pointer.contains("+") || pointer.contains("*") || pointer.contains("-/");
  }

  private static String plain(String pointer) {
    return pointer.replaceAll(":\\d$", "");
  }

  private boolean isSame(Matcher figure, String pointer, String words) {
    JsonNode node = isReckoned(pointer) ? null : json.at(plain(pointer));
    if (figure.group(2) != null) {
      Matcher iso = ISO.matcher(node == null ? "" : node.asText());
      return iso.matches()
          && Integer.parseInt(iso.group(3)) == Integer.parseInt(figure.group(1))
          && MONTHS.split(" ")[Integer.parseInt(iso.group(2)) - 1].equals(figure.group(2))
          && (figure.group(3) == null || figure.group(3).equals(iso.group(1)));
    }
    BigDecimal value = new BigDecimal(figure.group(4).replace(",", "").replace("+", ""));
    if (words.startsWith("day", figure.end() + 1) && words.contains(" before ")) {
      value = value.negate();
    }
    return isReckoned(pointer) ? isReckoned(value, pointer) : isOf(value, pointer, node);
  }

  /** As many decimals as the words have; a mark names them where words leave zeros out. */
  private static boolean isOf(BigDecimal value, String pointer, @Nullable JsonNode node) {
    if (node == null || !(node.isNumber() || node.isArray())) {
      return false;
    }
    BigDecimal right =
        node.isArray() ? BigDecimal.valueOf(node.size()) : new BigDecimal(node.asText());
    int places =
        pointer.matches(".*:\\d$")
            ? pointer.charAt(pointer.length() - 1) - '0'
            : Math.max(0, value.scale());
    int known = Math.max(0, right.scale());
    // The document rounds too: a figure of fewer decimals may be half of its last one beside.
    BigDecimal slack = places < known ? half(places).add(half(known)) : BigDecimal.ZERO;
    return value.subtract(right).abs().compareTo(slack) <= 0;
  }

  private static BigDecimal half(int places) {
    return new BigDecimal("0.5").movePointLeft(places);
  }

  /** Sums, differences and products of rounded values. */
  private boolean isReckoned(BigDecimal value, String pointer) {
    if (pointer.contains("*")) {
      String[] of = pointer.split("\\*");
      BigDecimal a = number(of[0]);
      BigDecimal b = of[1].startsWith("/") ? number(of[1]) : new BigDecimal(of[1]);
      BigDecimal slack = half(Math.max(0, value.scale()));
      return value.subtract(a.multiply(b)).abs().compareTo(slack) <= 0;
    }
    boolean plus = pointer.contains("+");
    String[] of = pointer.split(plus ? "\\+" : "-(?=/)");
    BigDecimal a = number(of[0]);
    BigDecimal b = number(of[1]);
    BigDecimal right = plus ? a.add(b) : a.subtract(b);
    BigDecimal slack =
        value.scale() >= right.scale()
            ? BigDecimal.ZERO
            : half(Math.max(0, value.scale())).add(half(right.scale()).add(half(right.scale())));
    return value.subtract(right).abs().compareTo(slack) <= 0;
  }

  private BigDecimal number(String pointer) {
    return new BigDecimal(json.at(pointer).asText());
  }
}
