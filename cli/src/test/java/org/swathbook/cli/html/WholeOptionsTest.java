package org.swathbook.cli.html;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WholeOptionsTest {
  @Test
  void namesAreMarkedInWordsAlone() {
    assertThat(WholeOptions.in("<p>see 'plan --keep' and --must-include, -x</p>"))
        .isEqualTo(
            "<p>see 'plan <span class=\"whole\">--keep</span>' and <span"
                + " class=\"whole\">--must-include</span>, -x</p>");
  }

  /** Titles and drawings hold no marks; neither do the insides of tags, nor what only looks so. */
  @Test
  void allElseStaysAsItIs() {
    String page =
        "<title>a --title\nof two</title><style>a { --b: 1px }</style><p id=\"--c\">x--y 3--z"
            + "</p><svg><text>--drawn</text></svg><!-- --said -->";

    assertThat(WholeOptions.in(page)).isEqualTo(page);
  }
}
