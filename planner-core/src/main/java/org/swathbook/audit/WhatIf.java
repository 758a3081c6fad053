package org.swathbook.audit;

import org.swathbook.catalog.Weed;

/** One change of what was sprayed, to be tried on every field. */
public sealed interface WhatIf {

  /** As it is typed. */
  String spelling();

  /** What is changed, in words. */
  String words();

  /** One more product in each post pass in which a driver weed met fewer than two foliar sites. */
  record SecondFoliarSite() implements WhatIf {
    public static final String NAME = "second-foliar-site";

    @Override
    public String spelling() {
      return NAME;
    }

    @Override
    public String words() {
      return "a second effective foliar site in every post pass";
    }
  }

  /** A soil residual in the first post pass, on every field that has the driver weed. */
  record OverlappingResidual(Weed weed) implements WhatIf {
    public static final String NAME = "overlapping-residual";

    @Override
    public String spelling() {
      return NAME + ":" + weed.id();
    }

    @Override
    public String words() {
      return "an overlapping residual wherever " + weed.name() + " drives the program";
    }
  }

  /** The first post pass at a crop stage at the latest; later ones keep their distance to it. */
  record PostsBy(String stage) implements WhatIf {
    public static final String NAME = "posts-by";

    @Override
    public String spelling() {
      return NAME + ":" + stage;
    }

    @Override
    public String words() {
      return "every first post pass by "
          + stage
          + ", later ones as many days after it as they were";
    }
  }
}
