package org.swathbook.catalog.file;

import java.util.List;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Weed;

/**
 * The starter catalog as the build has made it, for books that lay nothing over it. What its files
 * say, and where, is in {@link StarterFile}.
 */
record MadeStarter(
    List<Ingredient> ingredients,
    List<Product> products,
    List<Weed> weeds,
    List<Crop> crops,
    List<Response> responses,
    List<Interaction> interactions) {

  /** Name of the file beside the folder it was made from. */
  static final String NAME = "starter.made";

  private static MadeStarter of(Catalog c) {
    return new MadeStarter(
        List.copyOf(c.ingredients()),
        List.copyOf(c.products()),
        List.copyOf(c.weeds()),
        List.copyOf(c.crops()),
        List.copyOf(c.responses()),
        c.interactions());
  }

  static byte[] write(Catalog catalog) {
    return ValueWriter.write(of(catalog));
  }

  static Catalog read(byte[] content) {
    MadeStarter made = ValueReader.read(content, MadeStarter.class);
    return new Catalog(
        made.ingredients, made.products, made.weeds, made.crops, made.responses, made.interactions);
  }
}
