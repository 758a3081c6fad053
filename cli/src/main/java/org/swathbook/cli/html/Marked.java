package org.swathbook.cli.html;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Words of a page, and where the figures in them stand in the {@code --json} document of the same
 * command. A template writes that beside the words as {@code data-json}, so that a script, or a
 * test, can hold a page against the document.
 *
 * @param words plain text
 * @param json a JSON Pointer (RFC 6901) for each figure and date of the words, in their order,
 *     apart by blanks; null where the document has none of them. {@code a+b} and {@code a*b} are a
 *     sum and a product, {@code a*100} a share in percent; {@code a:2} says that the words round to
 *     two decimals and leave trailing zeros out; the pointer of an array stands for how many it
 *     has, that of a text for the text itself; {@code -} is a figure that is no result
 */
public record Marked(String words, @Nullable String json) {

  static Marked plain(String words) {
    return new Marked(words, null);
  }

  /** Without pointers, plain words. */
  static Marked of(String words, String... pointers) {
    String all = String.join(" ", pointers).strip().replaceAll(" +", " ");
    return new Marked(words, all.isEmpty() ? null : all);
  }

  /**
   * @param at beginning of the pointers; null where the document has none of the figures
   */
  static Marked under(@Nullable String at, String words, String... keys) {
    return at == null
        ? plain(words)
        : of(words, Arrays.stream(keys).map(k -> at + k).toArray(String[]::new));
  }

  static List<Marked> plain(List<String> cells) {
    return cells.stream().map(Marked::plain).toList();
  }

  /** Rows of a table in which nothing is marked. */
  public static List<List<Marked>> rows(List<List<String>> rows) {
    return rows.stream().map(Marked::plain).toList();
  }
}
