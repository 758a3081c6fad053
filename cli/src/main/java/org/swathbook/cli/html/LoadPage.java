package org.swathbook.cli.html;

import java.util.List;
import org.swathbook.cli.text.FindingText;
import org.swathbook.cli.text.Section;

/**
 * What the template of a load sheet is filled with. All words are plain text; the template escapes
 * them.
 *
 * @param job field, crop and day
 * @param settings how the sprayer is set, as far as the mix says
 * @param blocked whether there is no load
 * @param loads what goes into each load
 * @param rest what else whoever fills a sprayer needs
 */
public record LoadPage(
    SheetHead head,
    String job,
    List<Pair> settings,
    boolean blocked,
    FindingText.Shown shown,
    List<Section> loads,
    List<Section> rest,
    List<String> signOff) {

  /** A name and its value. */
  public record Pair(String name, String value) {}

  public LoadPage {
    settings = List.copyOf(settings);
    loads = List.copyOf(loads);
    rest = List.copyOf(rest);
    signOff = List.copyOf(signOff);
  }
}
