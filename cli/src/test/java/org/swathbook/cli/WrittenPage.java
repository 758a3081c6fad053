package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.swathbook.cli.report.Cautions;

/** What is asked of every page. */
final class WrittenPage {
  private WrittenPage() {}

  /** Text of a page without its tags, one blank between words. */
  static String words(String page) {
    return page.substring(page.indexOf("<body"))
        .replaceAll("<[^>]+>", " ")
        .replace("&#39;", "'")
        .replace("&#34;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .replaceAll("\\s+", " ");
  }

  /** Nothing runs, nothing is fetched, and the cautions stand on it. */
  static void standsByItself(String page) {
    assertThat(page.toLowerCase(Locale.ROOT).replaceAll("url\\(#[a-z]+\\)", ""))
        .startsWith("<!doctype html>")
        .doesNotContain("<script", "<link", "<img", "<iframe", "http:", "https:", "url(", "@import")
        .doesNotContain("onload", "onclick");
    assertThat(words(page)).contains(Cautions.ALL).contains("The label is the law");
  }
}
