package org.swathbook.catalog.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenEntry;

/** What else in a catalog names an entry, and so changes with it. */
public final class WhereUsed {
  private WhereUsed() {}

  /** One line a kind of mention, {@code products: dicamba-4sl}. */
  public static List<String> of(Catalog catalog, WrittenEntry entry) {
    List<String> out = new ArrayList<>();
    if (entry.kind() == EntryKind.INGREDIENT) {
      ingredient(catalog, new IngredientId(entry.id()), out);
    } else if (entry.kind() == EntryKind.WEED) {
      WeedId weed = WeedId.of(entry.id());
      long ratings = catalog.responses().stream().filter(r -> r.weed().equals(weed)).count();
      add(out, "ratings", ratings == 0 ? "" : Long.toString(ratings));
      add(out, "interactions", sides(catalog, i -> i.weeds().contains(weed)));
    } else if (entry.kind() == EntryKind.CROP) {
      CropId crop = new CropId(entry.id());
      add(out, "uses", names(catalog, i -> i.uses().stream().anyMatch(u -> isIn(u, crop, false))));
      add(
          out,
          "refused by",
          names(catalog, i -> i.uses().stream().anyMatch(u -> isIn(u, crop, true))));
      add(out, "next-crop intervals", names(catalog, i -> i.rotation().containsKey(crop)));
    }
    return out;
  }

  private static boolean isIn(Use use, CropId crop, boolean refused) {
    return use.crop().equals(Optional.of(crop)) && use.refused() == refused;
  }

  private static void ingredient(Catalog catalog, IngredientId id, List<String> out) {
    add(
        out,
        "products",
        catalog.products().stream()
            .filter(p -> p.find(id).isPresent())
            .map(p -> p.name())
            .collect(Collectors.joining(", ")));
    String group = catalog.ingredient(id).capGroup();
    add(
        out,
        "caps shared with",
        names(catalog, i -> i.capGroup().equals(group) && !i.id().equals(id)));
    add(
        out,
        "partner lists",
        names(
            catalog,
            i ->
                i.uses().stream()
                    .flatMap(u -> u.terms().tank().partners().find().stream())
                    .map(TankTerms.PartnerList::listed)
                    .anyMatch(l -> l.contains(id))));
    add(
        out,
        "interactions",
        sides(catalog, i -> names(i.one(), id, catalog) || names(i.other(), id, catalog)));
  }

  private static boolean names(Interaction.Side side, IngredientId id, Catalog catalog) {
    return side.ingredient().equals(Optional.of(id))
        || side.site().equals(Optional.of(catalog.ingredient(id).site()));
  }

  private static String names(Catalog catalog, Predicate<Ingredient> which) {
    return catalog.ingredients().stream()
        .filter(which)
        .map(Ingredient::name)
        .collect(Collectors.joining(", "));
  }

  private static String sides(Catalog catalog, Predicate<Interaction> which) {
    return catalog.interactions().stream()
        .filter(which)
        .map(i -> InteractionWords.of(i) + " (" + i.kind().name().toLowerCase(Locale.ROOT) + ")")
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static void add(List<String> out, String what, String where) {
    if (!where.isEmpty()) {
      out.add(what + ": " + where);
    }
  }
}
