package org.swathbook.cli.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** Fills templates; they are classes made by the build. */
final class Pages {
  /** Where the build puts the classes that it makes of the templates. */
  private static final String TEMPLATES = "org.swathbook.cli.html.made";

  private Pages() {}

  static String fill(String template, Object page) {
    StringOutput out = new StringOutput();
    TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES)
        .render(template, page, out);
    return WholeOptions.in(out.toString());
  }
}
