package org.swathbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.audit.WhatIf;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Weed;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;

/** Reads the changes of {@code --what-if}. */
final class WhatIfWords {
  private static final String KNOWN =
      "write second-foliar-site, overlapping-residual:WEED or posts-by:STAGE, for example"
          + " overlapping-residual:AMAPA or posts-by:V3";

  private WhatIfWords() {}

  static List<WhatIf> read(Catalog catalog, List<String> typed, boolean ledger) {
    Problems problems = new Problems();
    Mark mark = Mark.startOf("--what-if");
    if (ledger) {
      problems.add(mark, "--what-if and --ledger are two reports", "ask for one of them");
    }
    List<WhatIf> out = new ArrayList<>();
    for (String one : typed) {
      int colon = one.indexOf(':');
      String name = (colon < 0 ? one : one.substring(0, colon)).strip();
      String of = colon < 0 ? "" : one.substring(colon + 1).strip();
      Optional<WhatIf> change = Optional.empty();
      if (name.equals(WhatIf.SecondFoliarSite.NAME) && colon < 0) {
        change = Optional.of(new WhatIf.SecondFoliarSite());
      } else if (name.equals(WhatIf.OverlappingResidual.NAME) && !of.isEmpty()) {
        Optional<Weed> weed = catalog.findWeed(of);
        if (weed.isEmpty()) {
          problems.add(
              mark,
              "'" + of + "' is no weed of the catalog",
              "write an EPPO code or a common name; catalog list shows them");
          continue;
        }
        change = weed.map(WhatIf.OverlappingResidual::new);
      } else if (name.equals(WhatIf.PostsBy.NAME) && !of.isEmpty()) {
        if (catalog.crops().stream().noneMatch(c -> c.findStage(of).isPresent())) {
          problems.add(
              mark,
              "'" + of + "' is no stage of a crop",
              "write a stage, V3 or 3-leaf for example");
          continue;
        }
        change = Optional.of(new WhatIf.PostsBy(of));
      }
      if (change.isEmpty()) {
        problems.add(mark, "'" + one + "' is no change that can be tried", KNOWN);
      }
      change.ifPresent(out::add);
    }
    problems.throwIfAny();
    return List.copyOf(out);
  }
}
