package org.swathbook.testing;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.FALL;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;
import static org.swathbook.catalog.Position.STUBBLE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Rate;

/**
 * Ten actives with typical uses, one product each and typical control, from memory. Rates, lengths
 * and limits are of the right order; the labels behind them are not looked up.
 */
final class FixtureActives {
  private static final Source SOURCE = new Source("from memory, test fixture");

  private FixtureActives() {}

  static List<Ingredient> ingredients() {
    return List.of(
        IngredientBuilder.of("S-metolachlor", 15, Movement.SHOOT, Basis.AI)
            .soil(0.95, 21, 1.9, 42, 12)
            .use(pre("soybean", "0.95-1.9 lb ai/acre"))
            .use(pre("corn", "0.95-1.9 lb ai/acre"))
            .use(pre("grain-sorghum", "0.95-1.6 lb ai/acre").traits("safened-seed"))
            .use(post("soybean", "0.95-1.27 lb ai/acre").before("VE", "R1").noCropHeight())
            .use(
                post("corn", "0.95-1.9 lb ai/acre")
                    .before("VE", "VT")
                    .cropHeight(Limit.atMost(40 * 2.54)))
            .build(),
        IngredientBuilder.of("pyroxasulfone", 15, Movement.SHOOT, Basis.AI)
            .soil(0.08, 28, 0.16, 50, 12)
            .use(pre("soybean", "0.08-0.16 lb ai/acre"))
            .use(pre("corn", "0.08-0.22 lb ai/acre"))
            .build(),
        IngredientBuilder.of("flumioxazin", 14, Movement.CONTACT, Basis.AI)
            .soil(0.063, 28, 0.096, 42, 7)
            .use(pre("soybean", "0.063-0.096 lb ai/acre").before("", "+4"))
            .build(),
        IngredientBuilder.of("metribuzin", 5, Movement.XYLEM, Basis.AI)
            .soil(0.25, 24, 0.5, 40, 12)
            .use(pre("soybean", "0.25-0.5 lb ai/acre").soilPh(Limit.below(7.5)))
            .build(),
        IngredientBuilder.of("atrazine", 5, Movement.XYLEM, Basis.AI)
            .soil(0.5, 21, 2.0, 50, 12)
            .foliar(4)
            .use(pre("corn", "0.5-2.0 lb ai/acre").cap("2.5 lb ai/acre"))
            .use(pre("grain-sorghum", "0.5-1.5 lb ai/acre").cap("2.5 lb ai/acre"))
            .use(
                post("corn", "0.5-2.0 lb ai/acre")
                    .through("VE", "")
                    .cropHeight(Limit.below(12 * 2.54))
                    .cap("2.5 lb ai/acre"))
            .build(),
        IngredientBuilder.of("mesotrione", 27, Movement.XYLEM, Basis.AI)
            .soil(0.094, 21, 0.188, 35, 12)
            .foliar(1)
            .use(pre("corn", "0.188-0.24 lb ai/acre"))
            .use(
                post("corn", "0.094 lb ai/acre")
                    .through("VE", "V8")
                    .cropHeight(Limit.atMost(30 * 2.54)))
            .build(),
        IngredientBuilder.of("glyphosate", 9, Movement.SYSTEMIC, Basis.AE)
            .foliar(1)
            .use(
                UseBuilder.ofAnyCrop(BURNDOWN, PREPLANT, PRE)
                    .before("", "emergence")
                    .traits()
                    .rate("0.75-1.5 lb ae/acre")
                    .plantingDays(0))
            .use(
                UseBuilder.ofAnyCrop(STUBBLE, FALL).noTiming().traits().rate("0.75-1.5 lb ae/acre"))
            .use(post("soybean", "0.75-1.13 lb ae/acre").through("VE", "R2").traits("glyphosate"))
            .use(
                post("corn", "0.75-1.13 lb ae/acre")
                    .through("VE", "V8")
                    .cropHeight(Limit.atMost(30 * 2.54))
                    .traits("glyphosate"))
            .build(),
        IngredientBuilder.of("glufosinate-ammonium", 10, Movement.CONTACT, Basis.AI)
            .foliar(4)
            .use(
                post("soybean", "0.53-0.66 lb ai/acre")
                    .before("VE", "R1")
                    .noCropHeight()
                    .traits("glufosinate")
                    .repeatDays(7)
                    .weedHeights(4, 4)
                    .grainDays(70))
            .use(
                post("corn", "0.40-0.53 lb ai/acre")
                    .through("VE", "V6")
                    .cropHeight(Limit.atMost(24 * 2.54))
                    .traits("glufosinate"))
            .build(),
        IngredientBuilder.of("2,4-D choline", 4, Movement.SYSTEMIC, Basis.AE)
            .capGroup("2,4-D")
            .foliar(1)
            .use(
                post("soybean", "0.95 lb ae/acre")
                    .through("VE", "R1")
                    .noCropHeight()
                    .traits("2,4-D")
                    .repeatDays(12))
            .build(),
        IngredientBuilder.of("clethodim", 1, Movement.SYSTEMIC, Basis.AI)
            .foliar(1)
            .use(post("soybean", "0.09-0.125 lb ai/acre").through("VE", "harvest-60").traits())
            .build());
  }

  private static UseBuilder pre(String crop, String rate) {
    return UseBuilder.of(crop, PREPLANT, PRE)
        .before("", crop.equals("grain-sorghum") ? "emergence" : "VE")
        .traits()
        .rate(rate)
        .plantingDays(0)
        .noCropHeight();
  }

  private static UseBuilder post(String crop, String rate) {
    return UseBuilder.of(crop, POST).traits().rate(rate);
  }

  static List<Product> products() {
    return List.of(
        product("s-metolachlor-7.62ec", "S-metolachlor", "7.62 lb/gal", "EC", "pt/acre"),
        product("pyroxasulfone-85wg", "pyroxasulfone", "85 %", "WG", "oz weight/acre"),
        product("flumioxazin-51wg", "flumioxazin", "51 %", "WG", "oz weight/acre"),
        product("metribuzin-75wg", "metribuzin", "75 %", "WG", "lb/acre"),
        product("atrazine-4sc", "atrazine", "4 lb/gal", "SC", "qt/acre"),
        product("mesotrione-4sc", "mesotrione", "4 lb/gal", "SC", "fl oz/acre"),
        product("glyphosate-4.5sl", "glyphosate", "4.5 lb ae/gal", "SL", "fl oz/acre"),
        product("glufosinate-2.34sl", "glufosinate-ammonium", "2.34 lb/gal", "SL", "fl oz/acre"),
        product("2-4-d-choline-3.8sl", "2,4-D choline", "3.8 lb ae/gal", "SL", "pt/acre"),
        product("clethodim-2ec", "clethodim", "2 lb/gal", "EC", "fl oz/acre"));
  }

  private static Product product(
      String id, String active, String strength, String formulation, String spoken) {
    IngredientId ingredient = IngredientId.of(active);
    Basis basis =
        ingredients().stream()
            .filter(i -> i.id().equals(ingredient))
            .findFirst()
            .orElseThrow()
            .rateBasis();
    return new Product(
        new ProductId(id),
        id,
        List.of(new Product.Content(ingredient, Concentration.parse(strength, basis))),
        formulation,
        Rate.parseUnit(spoken),
        Rate.parseUnit(spoken),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Stated.unknown("protective equipment"),
        "",
        SOURCE,
        Map.of());
  }

  private static final String[] WEEDS = {
    "AMAPA", "AMATU", "AMBTR", "ABUTH", "KCHSC", "SETFA", "SETVI", "SORVU"
  };

  /** Typical control in percent, weeds in the order of {@link #WEEDS}. */
  static List<Response> responses() {
    List<Response> out = new ArrayList<>();
    pre(out, "S-metolachlor", 80, 80, 10, 10, 30, 90, 90, 40);
    pre(out, "pyroxasulfone", 88, 88, 30, 60, 50, 92, 92, 60);
    pre(out, "flumioxazin", 90, 90, 40, 75, 75, 45, 45, 10);
    pre(out, "metribuzin", 80, 80, 55, 75, 75, 50, 50, 20);
    pre(out, "atrazine", 80, 80, 70, 75, 80, 60, 60, 20);
    pre(out, "mesotrione", 85, 85, 60, 90, 75, 30, 30, 15);
    post(out, "atrazine", 85, 85, 60, 80, 75, 50, 50, 10);
    post(out, "mesotrione", 88, 88, 75, 94, 70, 30, 30, 20);
    post(out, "glyphosate", 95, 93, 92, 90, 90, 96, 96, 97);
    post(out, "glufosinate-ammonium", 82, 86, 72, 80, 65, 85, 85, 85);
    post(out, "2,4-D choline", 85, 85, 90, 85, 60, 0, 0, 0);
    post(out, "clethodim", 0, 0, 0, 0, 0, 96, 96, 95);
    return out;
  }

  private static void pre(List<Response> out, String active, int... pct) {
    responses(out, active, Response.Timing.PRE, OptionalDouble.empty(), pct);
  }

  private static void post(List<Response> out, String active, int... pct) {
    boolean contact = active.startsWith("glufosinate");
    OptionalDouble height = OptionalDouble.of((contact ? 4 : 6) * 2.54);
    responses(out, active, Response.Timing.POST, height, pct);
    responses(out, active, Response.Timing.BURNDOWN, height, pct);
  }

  private static void responses(
      List<Response> out, String active, Response.Timing timing, OptionalDouble height, int[] pct) {
    for (int i = 0; i < WEEDS.length; i++) {
      out.add(
          new Response(
              WeedId.of(WEEDS[i]),
              IngredientId.of(active),
              timing,
              pct[i],
              Math.max(0, pct[i] - 10),
              Math.min(100, pct[i] + 5),
              height,
              SOURCE,
              "medium"));
    }
  }
}
