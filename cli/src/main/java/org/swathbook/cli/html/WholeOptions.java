package org.swathbook.cli.html;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps the name of an option in one line: a browser would break it behind a hyphen. Marked in the
 * page, so that the words stay what can be copied into a call.
 */
final class WholeOptions {
  private static final Pattern NAMES =
      Pattern.compile(
          "(?s)<svg.*?</svg>|<style.*?</style>|<title.*?</title>|<[^>]*>"
              + "|(?<![\\w-])(--[a-z]+(?:-[a-z]+)*)");

  private WholeOptions() {}

  static String in(String page) {
    return NAMES
        .matcher(page)
        .replaceAll(
            m ->
                m.group(1) == null
                    ? Matcher.quoteReplacement(m.group())
                    : "<span class=\"whole\">" + m.group(1) + "</span>");
  }
}
