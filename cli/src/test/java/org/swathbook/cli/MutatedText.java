package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sound file with one to four mistakes made in it: of the kind that a disk, an editor, a
 * spreadsheet or a tired hand makes, or that somebody makes who means harm.
 */
final class MutatedText {
  private static final Pattern VALUE = Pattern.compile(":[ ]+([^\\[{#\\n][^,}\\]#\\n]*)");
  private static final Pattern KEY = Pattern.compile("([A-Za-z][A-Za-z0-9-]*):(?=[ \\n])");
  private static final Pattern FLOW = Pattern.compile("\\{[^{}\\n]*\\}|\\[[^\\[\\]\\n]*\\]");

  private static final String MARKS = "\"'[]{},:;#&*!|>%@`\n\r\t -\\";

  private final Random random;
  private final boolean isYaml;

  /** Values that stand in sound files, to be put where they do not belong. */
  private final List<String> words;

  MutatedText(Random random, boolean isYaml, List<String> words) {
    this.random = random;
    this.isYaml = isYaml;
    this.words = words;
  }

  byte[] of(String sound) {
    String text = sound;
    int mistakes = 1 + (random.nextInt(3) == 0 ? random.nextInt(4) : 0);
    for (int i = 0; i < mistakes; i++) {
      text =
          switch (random.nextInt(10)) {
            case 0 -> scribbled(text);
            case 1 -> withOtherLines(text);
            default -> isYaml ? yaml(text) : table(text);
          };
    }
    return random.nextInt(12) == 0 ? spoilt(text) : text.getBytes(UTF_8);
  }

  private int upTo(int bound) {
    return bound <= 0 ? 0 : random.nextInt(bound);
  }

  private String value(String old) {
    return switch (random.nextInt(4)) {
      case 0 -> NastyValues.any(random);
      case 1 -> words.get(random.nextInt(words.size()));
      default -> NastyValues.stretched(old, random);
    };
  }

  // ---- bytes

  private byte[] spoilt(String text) {
    byte[] bytes = text.getBytes(UTF_8);
    return switch (random.nextInt(9)) {
      case 0 -> text.getBytes(UTF_16);
      case 1 -> text.getBytes(ISO_8859_1);
      case 2 -> ("\ufeff" + text).getBytes(UTF_8);
      case 3 -> text.replace("\n", "\r").getBytes(UTF_8);
      case 4 -> text.replace("\n", "\r\n").getBytes(UTF_8);
      case 5 -> Arrays.copyOf(bytes, upTo(bytes.length));
      case 6 -> Arrays.copyOf(bytes, bytes.length + upTo(3_000));
      case 7 -> new byte[0];
      default -> flipped(bytes);
    };
  }

  private byte[] flipped(byte[] bytes) {
    for (int i = 1 + random.nextInt(8); i > 0 && bytes.length > 0; i--) {
      bytes[upTo(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  private String scribbled(String text) {
    int from = upTo(text.length());
    int to = Math.min(text.length(), from + upTo(20));
    String middle =
        switch (random.nextInt(6)) {
          case 0 -> NastyValues.any(random);
          case 1 -> text.substring(from, to).repeat(1 + random.nextInt(4));
          case 2 -> String.valueOf(MARKS.charAt(upTo(MARKS.length())));
          case 3 -> String.valueOf((char) random.nextInt(0x10000));
          default -> "";
        };
    return text.substring(0, from) + middle + text.substring(to);
  }

  // ---- lines

  private String withOtherLines(String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int at = upTo(lines.size());
    switch (random.nextInt(7)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(upTo(lines.size())));
      case 2 -> Collections.swap(lines, at, upTo(lines.size()));
      case 3 -> lines.subList(at, lines.size()).clear();
      case 4 -> lines.set(at, lines.get(at).substring(0, upTo(lines.get(at).length())));
      case 5 -> lines.add(at, random.nextBoolean() ? "" : "# " + "x".repeat(upTo(200)));
      default -> lines.set(at, lines.get(at) + lines.get(upTo(lines.size())));
    }
    return String.join("\n", lines);
  }

  // ---- tables

  private String table(String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int rows = lines.size();
    int row = random.nextInt(5) == 0 ? 0 : upTo(rows);
    String[] head = lines.get(0).split(",", -1);
    int column = upTo(head.length);
    int other = upTo(head.length);
    switch (random.nextInt(12)) {
      case 0 -> all(lines, cells -> Collections.swap(cells, column, other));
      case 1 -> one(lines, row, cells -> Collections.swap(cells, column, other));
      case 2 -> all(lines, cells -> cells.remove(column));
      case 3 -> one(lines, 0, cells -> cells.set(column, cells.get(other)));
      case 4 -> all(lines, cells -> cells.add(column, cells.get(other)));
      case 5 -> one(lines, row, cells -> cells.set(column, "\"" + cells.get(column)));
      case 6 -> all(lines, cells -> cells.set(column, value(cells.get(column))));
      default -> one(lines, row, cells -> cells.set(column, value(cells.get(column))));
    }
    String joined = String.join("\n", lines);
    return random.nextInt(60) == 0 ? joined.replace(',', ';') : joined;
  }

  private interface Cells {
    void change(List<String> cells);
  }

  private static void all(List<String> lines, Cells change) {
    for (int i = 0; i < lines.size(); i++) {
      one(lines, i, change);
    }
  }

  private static void one(List<String> lines, int row, Cells change) {
    List<String> cells = new ArrayList<>(Arrays.asList(lines.get(row).split(",", -1)));
    try {
      change.change(cells);
    } catch (IndexOutOfBoundsException e) {
      return; // A row that is shorter than its head stays as it is.
    }
    lines.set(row, String.join(",", cells));
  }

  // ---- YAML

  private String yaml(String text) {
    return switch (random.nextInt(12)) {
      case 0 -> again(text, KEY, m -> random.nextBoolean() ? "unheardOf:" : m + "s:");
      case 1 -> again(text, FLOW, m -> "");
      case 2 -> again(text, FLOW, m -> m + ", " + m);
      case 3 -> again(text, FLOW, m -> random.nextBoolean() ? "[" + m + "]" : "nonsense");
      case 4 -> indented(text);
      case 5 -> structure(text);
      default -> again(text, VALUE, m -> ": " + yamlValue(m.substring(1).strip()));
    };
  }

  private String yamlValue(String old) {
    return switch (random.nextInt(8)) {
      case 0 -> "{x: " + old + "}";
      case 1 -> "[" + old + "]";
      case 2 -> "\"" + value(old) + "\"";
      default -> value(old);
    };
  }

  private interface Change {
    String to(String found);
  }

  private String again(String text, Pattern pattern, Change change) {
    Matcher m = pattern.matcher(text);
    List<int[]> places = new ArrayList<>();
    while (m.find()) {
      places.add(new int[] {m.start(), m.end()});
    }
    if (places.isEmpty()) {
      return text;
    }
    int[] at = places.get(random.nextInt(places.size()));
    return text.substring(0, at[0])
        + change.to(text.substring(at[0], at[1]))
        + text.substring(at[1]);
  }

  private String indented(String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int at = upTo(lines.size());
    String line = lines.get(at);
    lines.set(
        at,
        switch (random.nextInt(4)) {
          case 0 -> " " + line;
          case 1 -> "\t" + line;
          case 2 -> line.strip();
          default -> "- " + line;
        });
    return String.join("\n", lines);
  }

  private String structure(String text) {
    int deep = 1 << random.nextInt(16);
    return switch (random.nextInt(8)) {
      case 0 -> again(text, VALUE, m -> ": " + "[".repeat(deep) + "]".repeat(deep));
      case 1 -> again(text, VALUE, m -> ": &a " + m.substring(1)) + "\nmore: *a\n";
      case 2 -> laughs() + text;
      case 3 -> text + "\n---\n" + text;
      case 4 -> again(text, VALUE, m -> ": !!java.net.URL [\"nowhere\"]");
      case 5 -> text + "\n" + text;
      case 6 -> again(text, VALUE, m -> ": |\n    " + m.substring(1) + "\n    more\n");
      default -> "<<: {a: 1}\n" + text;
    };
  }

  /** Names for lists of names: nine lines that would unfold into a thousand million words. */
  private static String laughs() {
    StringBuilder out = new StringBuilder("a0: &a0 ha\n");
    for (int i = 1; i < 10; i++) {
      out.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(9));
      out.append("*a" + (i - 1) + "]\n");
    }
    return out.toString();
  }
}
