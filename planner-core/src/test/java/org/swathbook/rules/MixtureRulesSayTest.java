package org.swathbook.rules;

import static org.swathbook.rules.SaidCase.says;
import static org.swathbook.rules.StarterTanks.STARTER;
import static org.swathbook.rules.StarterTanks.before;
import static org.swathbook.rules.StarterTanks.corn;
import static org.swathbook.rules.StarterTanks.soy;
import static org.swathbook.rules.StarterTanks.value;
import static org.swathbook.rules.StarterTanks.without;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.program.Carrier;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;
import org.swathbook.testing.Sky;

/**
 * All that the rules on what stands together in a tank say and ask, to the number, at their limits
 * and on either side. Limits are those of the starter catalog or an invented label's; a tank is
 * sprayed at 15 gal an acre from a sprayer of 1200 gal.
 */
class MixtureRulesSayTest {
  static Stream<SaidCase> cases() {
    return Stream.of(
            adjuvants(),
            volumes(),
            droplets(),
            injuries(),
            insecticides(),
            jars(),
            partners(),
            weeds())
        .flatMap(List::stream);
  }

  private static final String CLETHODIM = "clethodim 0.125 ai";
  private static final String FOMESAFEN = "fomesafen 0.25 ai";
  private static final String GLYPHOSATE = "glyphosate 1.0 ae";

  private static Catalog noVolume(String active) {
    return Restated.none(
        Restated.none(STARTER, active, "terms.carrierMinGalPerAcre"),
        active,
        "terms.carrierAdvisedGalPerAcre");
  }

  private static MixCase palmer(String tank, int... resists) {
    return soy(tank).weed("AMAPA", 3, resists);
  }

  private static List<SaidCase> adjuvants() {
    return List.of(
        says(
            "adjuvant-needed",
            "clethodim without oil",
            soy(CLETHODIM),
            "warn: The label of clethodim asks for crop-oil or methylated-seed-oil, 1 %"
                + " v/v; it is not in the tank. [not in the tank; crop-oil or"
                + " methylated-seed-oil, 1 % v/v] crop-oil 1 % v/v, that is 1 gal in 100 gal, 12"
                + " gal in a load of 1200 gal"),
        says(
            "adjuvant-needed",
            "clethodim with 0.98 % of oil, rounded to a jug",
            soy(CLETHODIM).adjuvant("crop-oil", "0.98 % v/v")),
        says(
            "adjuvant-needed",
            "clethodim with 0.97 % of oil",
            soy(CLETHODIM).adjuvant("crop-oil", "0.97 % v/v"),
            "warn: The label of clethodim asks for crop-oil or methylated-seed-oil, 1 %"
                + " v/v; there is less crop-oil in the tank. [3 qt 1 pt 12.2 fl oz in 100 gal;"
                + " at least 1 gal in 100 gal] crop-oil 1 % v/v, that is 1 gal in 100 gal, 12"
                + " gal in a load of 1200 gal"),
        says(
            "adjuvant-needed",
            "clethodim with two oils, of which the larger does",
            soy(CLETHODIM).adjuvant("crop-oil", "0.5 % v/v").adjuvant("crop-oil", "1 % v/v")),
        says(
            "adjuvant-needed",
            "clethodim with two oils, the larger first",
            soy(CLETHODIM).adjuvant("crop-oil", "1 % v/v").adjuvant("crop-oil", "0.5 % v/v")),
        says(
            "adjuvant-needed",
            "bentazon with 2.4 lb of ammonium sulfate",
            soy("bentazon 1.0 ai")
                .adjuvant("crop-oil", "1 qt/acre")
                .adjuvant("ammonium-sulfate", "2.4 lb/acre"),
            "warn: The label of bentazon asks for ammonium-sulfate 2.5 lb/acre or"
                + " liquid-nitrogen 2 qt/acre; there is less ammonium-sulfate in the tank. [16 lb in 100 gal; at"
                + " least 16.67 lb in 100 gal] ammonium-sulfate 2.5 lb/acre, that is 16.67 lb in"
                + " 100 gal, 200 lb in a load of 1200 gal"),
        says(
            "adjuvant-needed",
            "dicamba by itself",
            soy("dicamba 0.5 ae"),
            "block: The label of dicamba forbids to spray it without drift-reducer, 0.3 %"
                + " v/v; it is not in the tank. [not in the tank; drift-reducer, 0.3 % v/v]"
                + " drift-reducer 0.3 % v/v, that is 1 qt 6.4 fl oz in 100 gal, 3 gal 2 qt 13 fl"
                + " oz in a load of 1200 gal",
            "block: The label of dicamba forbids to spray it without volatility-reducer,"
                + " 40 fl oz/acre; it is not in the tank. [not in the tank; volatility-reducer,"
                + " 40 fl oz/acre] volatility-reducer 40 fl oz/acre, that is 2 gal 11 fl oz in"
                + " 100 gal, 25 gal in a load of 1200 gal"),
        says(
            "adjuvant-needed",
            "clethodim beside 2,4-D choline, which refuses oil",
            soy("clethodim 0.125 ai + 2,4-D choline 0.95 ae"),
            "warn: The label of clethodim asks for crop-oil or methylated-seed-oil, 1 %"
                + " v/v; 2,4-D choline refuses all that would do. [refused by a partner;"
                + " crop-oil or methylated-seed-oil, 1 % v/v] two passes some days apart, or"
                + " another partner"),
        says(
            "adjuvant-needed",
            "what is needed not known",
            soy(without("clethodim", "terms.tank.adjuvantNeeded"), CLETHODIM),
            "ask: adjuvants that the label of clethodim asks for [label, adjuvants; then"
                + " tank.adjuvantNeeded in catalog/ingredients/clethodim.yaml]"),
        says(
            "adjuvant-refused",
            "ammonium sulfate with dicamba",
            soy("dicamba 0.5 ae").adjuvant("ammonium-sulfate", "8.5 lb/100 gal"),
            "block: The label of dicamba refuses ammonium-sulfate in soybean."
                + " [ammonium-sulfate; no ammonium-sulfate] leave ammonium-sulfate out; what the"
                + " labels together ask for is volatility-reducer and drift-reducer"),
        says(
            "adjuvant-refused",
            "oil with 2,4-D choline",
            soy("2,4-D choline 0.95 ae").adjuvant("crop-oil", "1 % v/v"),
            "block: The label of 2,4-D choline refuses crop-oil in soybean. [crop-oil; no"
                + " crop-oil] leave crop-oil out; no label in the tank asks for an adjuvant that"
                + " may go in"),
        says(
            "adjuvant-refused",
            "what is refused not known, with an adjuvant",
            soy(without("clethodim", "terms.tank.adjuvantRefused"), CLETHODIM)
                .adjuvant("crop-oil", "1 % v/v"),
            "ask: adjuvants that the label of clethodim refuses [label, adjuvants; then"
                + " tank.adjuvantRefused in catalog/ingredients/clethodim.yaml]"),
        says(
            "adjuvant-refused",
            "what is refused not known, without any",
            soy(without("clethodim", "terms.tank.adjuvantRefused"), CLETHODIM)));
  }

  private static List<SaidCase> volumes() {
    return List.of(
        says("carrier-volume", "dicamba at 15 gal", soy("dicamba 0.5 ae").gallons(15)),
        says(
            "carrier-volume",
            "dicamba at 14.9 gal",
            soy("dicamba 0.5 ae").gallons(14.9),
            "block: The label of dicamba asks for at least 15 gal/acre; this pass sprays"
                + " 14.9 gal/acre. [14.9 gal/acre; at least 15 gal/acre] spray 15 gal/acre; a"
                + " load of 1200 gal then covers 80 acres"),
        says(
            "carrier-volume",
            "saflufenacil at 14.9 gal, where 15 are advised",
            before(40, "soybean", "saflufenacil 0.022 ai").gallons(14.9),
            "warn: The label of saflufenacil advises at least 15 gal/acre; this pass"
                + " sprays 14.9 gal/acre. [14.9 gal/acre; at least 15 gal/acre] spray 15"
                + " gal/acre; a load of 1200 gal then covers 80 acres"),
        says(
            "carrier-volume",
            "no volume",
            soy("dicamba 0.5 ae").gallonsUnknown(),
            "ask: spray volume in gal/acre [the job: carrier volume]"),
        says(
            "carrier-volume",
            "a contact active without a volume on its label at 15 gal",
            soy(noVolume("fomesafen"), FOMESAFEN).gallons(15)),
        says(
            "carrier-volume",
            "a contact active without a volume on its label at 14.9 gal",
            soy(noVolume("fomesafen"), FOMESAFEN).gallons(14.9),
            "warn: Fomesafen must cover leaves; 14.9 gal/acre leaves gaps. [14.9 gal/acre;"
                + " at least 15 gal/acre] spray 15 gal/acre; a load of 1200 gal then covers 80"
                + " acres"),
        says(
            "carrier-volume",
            "a systemic one without a volume on its label at 5 gal",
            soy(noVolume("clethodim"), CLETHODIM).gallons(5)),
        says(
            "carrier-volume",
            "glufosinate without a volume on its label at 14.9 gal",
            soy(noVolume("glufosinate-ammonium"), "glufosinate-ammonium 0.6 ai").gallons(14.9),
            "warn: Glufosinate-ammonium must cover leaves; 14.9 gal/acre leaves gaps."
                + " [14.9 gal/acre; at least 15 gal/acre] spray 15 gal/acre; a load of 1200 gal"
                + " then covers 80 acres"),
        says(
            "carrier-volume",
            "paraquat without a volume on its label at 14.9 gal",
            MixCase.in("corn")
                .catalog(noVolume("paraquat"))
                .day(-5, "", 0)
                .tank("paraquat 0.5 cation")
                .gallons(14.9),
            "warn: Paraquat must cover leaves; 14.9 gal/acre leaves gaps. [14.9 gal/acre;"
                + " at least 15 gal/acre] spray 15 gal/acre; a load of 1200 gal then covers 80"
                + " acres"),
        says(
            "carrier-volume",
            "least volume not known",
            soy(without("clethodim", "terms.carrierMinGalPerAcre"), CLETHODIM),
            "ask: least spray volume of clethodim [label, spray volume; then carrier.min"
                + " in catalog/ingredients/clethodim.yaml]"),
        says(
            "carrier-volume",
            "40 gal where a label allows 20",
            soy(value("clethodim", "terms.carrierMaxGalPerAcre", 20.0), CLETHODIM).gallons(40),
            "block: The label of clethodim allows at most 20 gal/acre; this pass sprays 40"
                + " gal/acre. [40 gal/acre; at most 20 gal/acre] spray 20 gal/acre; a load of"
                + " 1200 gal then covers 60 acres"),
        says(
            "carrier-volume",
            "20 gal where a label allows 20",
            soy(value("clethodim", "terms.carrierMaxGalPerAcre", 20.0), CLETHODIM).gallons(20)),
        says(
            "carrier-volume",
            "two labels that no volume serves",
            soy(
                    value("clethodim", "terms.carrierMaxGalPerAcre", 12.0),
                    "clethodim 0.125 ai + dicamba 0.5 ae")
                .gallons(12),
            "block: The label of dicamba asks for at least 15 gal/acre; this pass sprays"
                + " 12 gal/acre. [12 gal/acre; at least 15 gal/acre] two passes: no volume is"
                + " within all labels of this tank"),
        says(
            "carrier-volume",
            "mesotrione over corn in liquid fertilizer",
            corn("mesotrione 0.094 ai").liquid(Carrier.Liquid.LIQUID_FERTILIZER),
            "block: The label of mesotrione refuses liquid fertilizer as the carrier over"
                + " a crop that is up. [liquid fertilizer; water] water as the carrier"),
        says(
            "carrier-volume",
            "liquid fertilizer, of which the label is not known",
            corn(without("mesotrione", "terms.fertilizerRefusedOverCrop"), "mesotrione 0.094 ai")
                .liquid(Carrier.Liquid.LIQUID_FERTILIZER),
            "ask: whether mesotrione may go over the crop in liquid fertilizer [label,"
                + " carrier; then carrier.fertilizer in catalog/ingredients/mesotrione.yaml]"),
        says(
            "carrier-volume",
            "mesotrione before corn in liquid fertilizer",
            before(0, "corn", "mesotrione 0.188 ai").liquid(Carrier.Liquid.LIQUID_FERTILIZER)));
  }

  private static List<SaidCase> droplets() {
    return List.of(
        says(
            "droplet-class",
            "glufosinate in very coarse droplets",
            soy("glufosinate-ammonium 0.6 ai").droplets(DropletClass.VERY_COARSE),
            "block: The label of glufosinate-ammonium asks for medium to coarse droplets,"
                + " and the nozzles make very coarse ones. [very coarse; medium to coarse]"
                + " nozzles or pressure that make medium to coarse droplets"),
        says(
            "droplet-class",
            "dicamba and glufosinate",
            soy("dicamba 0.5 ae + glufosinate-ammonium 0.6 ai"),
            "block: Dicamba asks for extremely coarse to ultra coarse droplets and"
                + " glufosinate-ammonium for medium to coarse; no class serves both. [extremely"
                + " coarse to ultra coarse; medium to coarse] two passes, or a partner that"
                + " allows the same droplets",
            "ask: droplet class of the nozzles at their pressure [the job: droplets]"),
        says(
            "droplet-class",
            "class of the label not known, a contact active in coarse droplets",
            soy(without("fomesafen", "terms.tank.droplets"), FOMESAFEN)
                .droplets(DropletClass.COARSE),
            "ask: droplet classes that the label of fomesafen allows [label, nozzles and"
                + " droplets; then tank.droplets in catalog/ingredients/fomesafen.yaml]"),
        says(
            "droplet-class",
            "class of the label not known, a contact active in very coarse droplets",
            soy(without("fomesafen", "terms.tank.droplets"), FOMESAFEN)
                .droplets(DropletClass.VERY_COARSE),
            "warn: Fomesafen must cover leaves, and very coarse droplets leave gaps. [very"
                + " coarse; finer than very coarse] coarse or finer droplets where every label"
                + " allows them, else 20 gal/acre or more, or another partner",
            "ask: droplet classes that the label of fomesafen allows [label, nozzles and"
                + " droplets; then tank.droplets in catalog/ingredients/fomesafen.yaml]"),
        says(
            "droplet-class",
            "class of the label not known, clethodim in very coarse droplets",
            soy(without("clethodim", "terms.tank.droplets"), CLETHODIM)
                .droplets(DropletClass.VERY_COARSE),
            "ask: droplet classes that the label of clethodim allows [label, nozzles and"
                + " droplets; then tank.droplets in catalog/ingredients/clethodim.yaml]"),
        says(
            "droplet-class",
            "droplets of the nozzles not known",
            soy("dicamba 0.5 ae"),
            "ask: droplet class of the nozzles at their pressure [the job: droplets]"),
        says(
            "droplet-class",
            "whether a label lists nozzles not known, and nobody looked",
            soy(without("dicamba", "terms.tank.nozzlesListed"), "dicamba 0.5 ae")
                .droplets(DropletClass.ULTRA_COARSE)
                .nozzlesUnlisted(),
            "ask: whether nozzle and pressure stand on the list of the label of dicamba"
                + " [the job: nozzlesListed; the list of the label for this date]"),
        says(
            "droplet-class",
            "a label that lists nozzles, and nobody looked",
            soy(value("dicamba", "terms.tank.nozzlesListed", true), "dicamba 0.5 ae")
                .droplets(DropletClass.ULTRA_COARSE)
                .nozzlesUnlisted(),
            "ask: whether nozzle and pressure stand on the list of the label of dicamba"
                + " [the job: nozzlesListed; the list of the label for this date]"),
        says(
            "droplet-class",
            "a label that lists none",
            soy(value("dicamba", "terms.tank.nozzlesListed", false), "dicamba 0.5 ae")
                .droplets(DropletClass.ULTRA_COARSE)
                .nozzlesUnlisted()));
  }

  private static List<SaidCase> injuries() {
    return List.of(
        says(
            "crop-injury-stack",
            "flumioxazin and pyroxasulfone on 1.5 % organic matter",
            before(0, "soybean", "flumioxazin 0.08 ai + pyroxasulfone 0.1 ai")
                .field(f -> f.soil(SoilTexture.LOAM, 1.5, 6.6)),
            "warn: Sites 14 and 15 together splash on and hold back seedlings that come up"
                + " through soil of 1.5 % organic matter. [together; one of them, or other"
                + " weather] one partner less, a lower rate, or spraying some days before"
                + " planting"),
        says(
            "crop-injury-stack",
            "flumioxazin and metribuzin on sandy loam",
            before(0, "soybean", "flumioxazin 0.08 ai + metribuzin 0.3 ai + clomazone 0.5 ai")
                .field(f -> f.soil(SoilTexture.SANDY_LOAM, 3, 6.6)),
            "warn: Sites 5 and 14 together splash on and hold back seedlings that come up"
                + " through coarse soil. [together; one of them, or other weather] one partner"
                + " less, a lower rate, or spraying some days before planting"),
        says(
            "crop-injury-stack",
            "flumioxazin and pyroxasulfone before half an inch",
            before(0, "soybean", "flumioxazin 0.08 ai + pyroxasulfone 0.1 ai")
                .field(f -> f.soil(SoilTexture.LOAM, 3, 6.6))
                .sky(Sky.fair().rain(30, 0.5)),
            "warn: Sites 14 and 15 together splash on and hold back seedlings that come up"
                + " through wet soil with more rain ahead. [together; one of them, or other"
                + " weather] one partner less, a lower rate, or spraying some days before"
                + " planting"),
        says(
            "crop-injury-stack",
            "flumioxazin and pyroxasulfone on a day of 59 F",
            before(0, "soybean", "flumioxazin 0.08 ai + pyroxasulfone 0.1 ai")
                .field(f -> f.soil(SoilTexture.LOAM, 3, 6.6))
                .sky(Sky.fair().high(59)),
            "warn: Sites 14 and 15 together splash on and hold back seedlings that come up"
                + " through cold soil. [together; one of them, or other weather] one partner"
                + " less, a lower rate, or spraying some days before planting"),
        says(
            "crop-injury-stack",
            "fomesafen with oil at 91 F",
            soy(FOMESAFEN).adjuvant("methylated-seed-oil", "1 % v/v").sky(Sky.fair().high(91)),
            "warn: Site 14 with an oil at 91 F burns leaves of the crop. [together; one of"
                + " them, or other weather] a surfactant in the place of the oil, or another day"),
        says(
            "crop-injury-stack",
            "imazethapyr on a day of 60 F",
            soy("imazethapyr 0.0625 ai").sky(Sky.fair().high(60))),
        says(
            "crop-injury-stack",
            "imazethapyr on a day of 59 F",
            soy("imazethapyr 0.0625 ai").sky(Sky.fair().high(59)),
            "warn: A crop that is slowed by cold breaks site 2 down slowly and yellows."
                + " [together; one of them, or other weather] a day when the crop has had some"
                + " warm ones, or a partner of another site"),
        says(
            "crop-injury-stack",
            "tembotrione with an organophosphate",
            corn(
                    Restated.none(STARTER, "tembotrione", "terms.tank.insecticides"),
                    "tembotrione 0.082 ai")
                .others("organophosphate"),
            "warn: An organophosphate keeps the crop from breaking down tembotrione:"
                + " leaves bleach and the crop stands still. [together; one of them] an active"
                + " of another site than 27"),
        says(
            "crop-injury-stack",
            "mesotrione with an organophosphate, which its label forbids",
            corn("mesotrione 0.094 ai").others("organophosphate")),
        says(
            "crop-injury-stack",
            "atrazine with an organophosphate",
            corn("atrazine 1.0 ai").others("organophosphate")),
        says(
            "crop-injury-stack",
            "mesotrione before corn with an organophosphate",
            MixCase.in("corn")
                .catalog(Restated.none(STARTER, "mesotrione", "terms.tank.insecticides"))
                .day(0, "", 0)
                .tank("mesotrione 0.188 ai")
                .others("organophosphate")));
  }

  private static List<SaidCase> insecticides() {
    return List.of(
        says(
            "insecticide-partner",
            "mesotrione with an organophosphate",
            corn("mesotrione 0.094 ai").others("organophosphate"),
            "block: The label of mesotrione forbids organophosphate insecticides."
                + " [organophosphate; no organophosphate] an active of another site; where it"
                + " went onto leaves, a pass 7 days later, with its day and the stage of the"
                + " crop in the journal"),
        says(
            "insecticide-partner",
            "mesotrione where the job names none",
            corn("mesotrione 0.094 ai"),
            "note: Neither job nor journal names an insecticide of this season; the label"
                + " of mesotrione has limits on organophosphates or others. others in the job:"
                + " what went on this season, or none; or the column insecticide of"
                + " applications.csv"),
        says(
            "insecticide-partner",
            "mesotrione and nicosulfuron where the job names none",
            corn("mesotrione 0.094 ai + nicosulfuron 0.031 ai"),
            "note: Neither job nor journal names an insecticide of this season; the labels"
                + " of mesotrione and nicosulfuron have limits on organophosphates or others."
                + " others in the job: what went on this season, or none; or the column"
                + " insecticide of applications.csv"),
        says(
            "insecticide-partner",
            "what a label refuses not known, and an organophosphate",
            corn(without("atrazine", "terms.tank.insecticides"), "atrazine 1.0 ai")
                .others("organophosphate"),
            "ask: insecticides that the label of atrazine refuses [label, insecticides;"
                + " then tank.insecticides in catalog/ingredients/atrazine.yaml]"),
        says(
            "insecticide-partner",
            "what a label refuses not known, and none named",
            corn(without("atrazine", "terms.tank.insecticides"), "atrazine 1.0 ai")));
  }

  private static List<SaidCase> jars() {
    return List.of(
        says(
            "jar-test",
            "two solutions at 9.9 gal",
            soy("glyphosate 1.0 ae + imazethapyr 0.0625 ai").gallons(9.9),
            "note: Try the mix in a jar first, at 9.9 gal/acre and in the order of mixing,"
                + " with the carrier of the load: it is mixed in less than 10 gal/acre. [not"
                + " tried; a jar that stays mixed for 15 to 30 minutes] a jar test that shows no"
                + " flakes, gel, heat or layers"),
        says(
            "jar-test",
            "three products",
            soy("glyphosate 1.0 ae + imazethapyr 0.0625 ai + clethodim 0.125 ai"),
            "note: Try the mix in a jar first, at 15 gal/acre and in the order of mixing,"
                + " with the carrier of the load: 3 products meet. [not tried; a jar that stays"
                + " mixed for 15 to 30 minutes] a jar test that shows no flakes, gel, heat or"
                + " layers"),
        says(
            "jar-test",
            "a granule with an emulsion",
            before(0, "soybean", "metribuzin 0.3 ai + S-metolachlor 1.2 ai"),
            "note: Try the mix in a jar first, at 15 gal/acre and in the order of mixing,"
                + " with the carrier of the load: a dry product meets an emulsion. [not tried; a"
                + " jar that stays mixed for 15 to 30 minutes] a jar test that shows no flakes,"
                + " gel, heat or layers"),
        says(
            "jar-test",
            "a granule with an oil",
            before(0, "soybean", "metribuzin 0.3 ai").adjuvant("crop-oil", "1 % v/v"),
            "note: Try the mix in a jar first, at 15 gal/acre and in the order of mixing,"
                + " with the carrier of the load: a dry product meets an oil concentrate. [not"
                + " tried; a jar that stays mixed for 15 to 30 minutes] a jar test that shows no"
                + " flakes, gel, heat or layers"),
        says(
            "jar-test",
            "a granule and a solution in liquid fertilizer, volume not known",
            before(0, "soybean", "metribuzin 0.3 ai + glyphosate 1.0 ae")
                .liquid(Carrier.Liquid.LIQUID_FERTILIZER)
                .gallonsUnknown(),
            "warn: Try the mix in a jar first, at the spray volume and in the order of"
                + " mixing, with the carrier of the load: liquid fertilizer carries it. [not"
                + " tried; a jar that stays mixed for 15 to 30 minutes] a jar test that shows no"
                + " flakes, gel, heat or layers"),
        says(
            "jar-test",
            "two products of which one label's partners are not known",
            soy(
                without("glyphosate", "terms.tank.partners"),
                "glyphosate 1.0 ae + imazethapyr 0.0625 ai"),
            "note: Try the mix in a jar first, at 15 gal/acre and in the order of mixing,"
                + " with the carrier of the load: whether glyphosate goes with the others is not"
                + " known. [not tried; a jar that stays mixed for 15 to 30 minutes] a jar test"
                + " that shows no flakes, gel, heat or layers"),
        says(
            "jar-test",
            "a label that forbids the test",
            soy(
                value("clethodim", "terms.tank.jarTestRefused", true),
                "glyphosate 1.0 ae + imazethapyr 0.0625 ai + clethodim 0.125 ai")),
        says(
            "mixing-order",
            "two products",
            soy("glyphosate 1.0 ae + clethodim 0.125 ai"),
            "note: A label's own order first, else: 1 half the water, agitator running, 2"
                + " clethodim-2ec, 3 glyphosate-4.5sl, 4 top up with water. Guides differ:"
                + " Oklahoma State puts solutions before emulsions."),
        says("mixing-order", "one product", soy("glyphosate 1.0 ae")));
  }

  private static List<SaidCase> partners() {
    return List.of(
        says(
            "partner-refused",
            "saflufenacil with flumioxazin",
            before(40, "soybean", "saflufenacil 0.022 ai + flumioxazin 0.06 ai"),
            "block: The label of saflufenacil refuses flumioxazin in one tank."
                + " [flumioxazin; refused partners] two passes some days apart, or another"
                + " partner"),
        says(
            "partner-refused",
            "partners of a label not known",
            soy(
                without("clethodim", "terms.tank.partners"),
                "glyphosate 1.0 ae + clethodim 0.125 ai + fomesafen 0.25 ai"),
            "ask: whether the partner list of clethodim for the date allows fomesafen and"
                + " glyphosate [label, tank mixing; then tank.partners in"
                + " catalog/ingredients/clethodim.yaml]"),
        says(
            "partner-refused",
            "partners of a label not known, and it is alone",
            soy(without("clethodim", "terms.tank.partners"), CLETHODIM)),
        says(
            "same-active-twice",
            "one product written twice",
            soy("glyphosate 0.5 ae + glyphosate 0.5 ae"),
            "warn: Glyphosate comes twice into one tank: 0.5 lb ae/acre in"
                + " glyphosate-4.5sl and 0.5 lb ae/acre in glyphosate-4.5sl, together 1 lb"
                + " ae/acre. [2 products; 1 product] drop one of them and set the other to what"
                + " is wanted"),
        says(
            "same-active-twice",
            "S-metolachlor beside a premix of it",
            before(0, "soybean", "S-metolachlor 0.5 ai")
                .product("s-metolachlor-metribuzin-6.5ec", "1 pt/acre"),
            "warn: Metolachlor comes twice into one tank: 0.5 lb ai/acre in"
                + " s-metolachlor-7.62ec and 0.656 lb ai/acre in s-metolachlor-metribuzin-6.5ec,"
                + " together 1.156 lb ai/acre. [2 products; 1 product] drop one of them and set"
                + " the other to what is wanted"),
        says(
            "same-active-twice",
            "three times",
            soy("glyphosate 0.5 ae + glyphosate 0.3 ae + glyphosate 0.2 ae"),
            "warn: Glyphosate comes 3 times into one tank: 0.5 lb ae/acre in"
                + " glyphosate-4.5sl, 0.3 lb ae/acre in glyphosate-4.5sl and 0.2 lb ae/acre in"
                + " glyphosate-4.5sl, together 1 lb ae/acre. [3 products; 1 product] drop one of"
                + " them and set the other to what is wanted"),
        says(
            "tank-residue",
            "dicamba last and water alone",
            MixCase.in("soybean", "glufosinate")
                .day(24, "V2", 5)
                .tank("glufosinate-ammonium 0.6 ai")
                .lastLoad("dicamba", Rinse.WATER_RINSE),
            "block: The last load held dicamba, traces of which injure soybean; it was"
                + " cleaned by one rinse with water, and its label asks for a triple rinse. [one"
                + " rinse with water; a triple rinse] a triple rinse of tank, lines, screens and"
                + " boom ends before this load",
            "ask: what the sprayer held before its last load, back to its last triple"
                + " rinse or tank cleaner [the job: sprayer, earlier]"),
        says(
            "tank-residue",
            "a clean-out not known",
            MixCase.in("soybean", "glufosinate")
                .catalog(without("dicamba", "terms.tank.cleanOut"))
                .day(24, "V2", 5)
                .tank("glufosinate-ammonium 0.6 ai")
                .lastLoad("dicamba", Rinse.CLEANER),
            "ask: clean-out after dicamba and the crops that its traces injure [label,"
                + " sprayer clean-out; then tank.cleanOut in catalog/ingredients/dicamba.yaml]"),
        says(
            "tank-residue",
            "the last load not known",
            MixCase.in("soybean", "glufosinate")
                .day(24, "V2", 5)
                .tank("glufosinate-ammonium 0.6 ai")
                .tankUnknown(),
            "ask: what the sprayer held before, and how it was cleaned [the job: sprayer]"),
        says(
            "tank-residue",
            "dicamba last, and nobody wrote down how it was cleaned",
            MixCase.in("soybean", "glufosinate")
                .day(24, "V2", 5)
                .tank("glufosinate-ammonium 0.6 ai")
                .lastLoad("dicamba"),
            "ask: what the sprayer held before its last load, back to its last triple"
                + " rinse or tank cleaner [the job: sprayer, earlier]",
            "ask: how the sprayer was cleaned after dicamba [the job: cleaned]"));
  }

  private static List<SaidCase> weeds() {
    return List.of(
        says(
            "single-site",
            "glyphosate on foxtail, no driver, that was seen",
            soy(GLYPHOSATE).seen("SETFA", 3),
            "note: Giant foxtail meets one effective foliar site (site 9: 98 %); the house"
                + " asks for 2. [1; 2] a partner of site 1 or 2 or 10"),
        says(
            "single-site",
            "glyphosate and clethodim on it",
            soy("glyphosate 1.0 ae + clethodim 0.125 ai").seen("SETFA", 3)),
        says(
            "single-site",
            "clethodim on velvetleaf, on which it does nothing",
            soy(CLETHODIM).seen("ABUTH", 3)),
        says(
            "resistant-biotype",
            "glyphosate alone on Palmer amaranth that resists it",
            palmer(GLYPHOSATE, 9),
            "warn: Palmer amaranth is met by glyphosate (site 9) alone, and 90 % of its"
                + " plants resist that: 37,000 standing on an acre. [90 % resist; none] a"
                + " partner of another foliar site; a sample if it is only suspected"),
        says(
            "resistant-biotype",
            "S-metolachlor alone before Palmer amaranth that resists site 15",
            before(0, "soybean", "S-metolachlor 1.6 ai").weed("AMAPA", 0, 15),
            "warn: Palmer amaranth is met by S-metolachlor (site 15) alone, and 90 % of"
                + " its plants resist that: 146,000 of the season on an acre. [90 % resist;"
                + " none] a partner of another soil site; a sample if it is only suspected"),
        says(
            "resistant-biotype",
            "glyphosate and imazethapyr on Palmer amaranth that resists both",
            palmer("glyphosate 1.0 ae + imazethapyr 0.0625 ai", 9, 2),
            "warn: Palmer amaranth is met by imazethapyr (site 2) alone, and 90 % of its"
                + " plants resist that: 146,000 of the season on an acre. [90 % resist; none] a"
                + " partner of another soil site; a sample if it is only suspected",
            "warn: Palmer amaranth is met by imazethapyr (site 2) and glyphosate (site 9)"
                + " alone, and 90 % of its plants resist that: 37,000 standing on an acre. [90 %"
                + " resist; none] a partner of another foliar site; a sample if it is only"
                + " suspected"),
        says(
            "single-site",
            "2,4-D choline and glyphosate on Palmer amaranth that resists 9",
            palmer("2,4-D choline 0.95 ae + glyphosate 1.0 ae", 9),
            "warn: Palmer amaranth meets one effective foliar site (site 4: 92 %, site 9:"
                + " resisted); the house asks for 2. [1; 2] a partner of site 2 or 10 or 14"),
        says(
            "single-site",
            "glyphosate alone on it",
            palmer(GLYPHOSATE, 9),
            "warn: Palmer amaranth meets no effective foliar sites (site 9: resisted); the"
                + " house asks for 2. [0; 2] a partner of site 2 or 4 or 10 or 14"),
        says(
            "single-site",
            "2,4-D choline and glufosinate on it, two sites",
            palmer("2,4-D choline 0.95 ae + glufosinate-ammonium 0.66 ai", 9)),
        says(
            "single-site",
            "one layer on Palmer amaranth",
            before(0, "soybean", "S-metolachlor 1.6 ai").weed("AMAPA", 0, 9),
            "warn: Palmer amaranth meets no effective foliar sites; the house asks for 2."
                + " [0; 2] a partner of site 2 or 4 or 10 or 14 or 22, or small plants and a"
                + " partner of site 5",
            "warn: Palmer amaranth meets one effective soil site (site 15: 79 %); the"
                + " house asks for 2. [1; 2] a partner of site 2 or 3 or 5 or 14"),
        says(
            "below-full-rate",
            "glufosinate 0.58 lb on Palmer amaranth of 4 in",
            soy("glufosinate-ammonium 0.58 ai").weed("AMAPA", 4),
            "warn: Glufosinate-ammonium: 0.58 lb ai/acre is below the full rate for Palmer"
                + " amaranth here, 0.595 lb ai/acre (the use in soybean has 0.53 lb ai/acre to"
                + " 0.66 lb ai/acre). [0.58 lb ai/acre; 0.595 lb ai/acre] 32 fl oz/acre of"
                + " glufosinate-2.34sl where the season's limits leave room, or smaller plants"),
        says(
            "below-full-rate",
            "glufosinate 0.595 lb on it, the middle of its range",
            soy("glufosinate-ammonium 0.595 ai").weed("AMAPA", 4)),
        says(
            "antagonism",
            "clethodim 0.093 lb with glyphosate and dicamba on volunteer corn",
            soy("clethodim 0.093 ai + glyphosate 1.0 ae + dicamba 0.5 ae").weed("ZEAMX", 5, 9),
            "warn: Clethodim loses 27 % to 75 % of its control on volunteer corn to a"
                + " partner in this tank; not at 0.094 lb ai/acre or more of clethodim. Expected"
                + " by its site here: 43 %. [43 %; the effective site of the house rules] raise"
                + " the clethodim to 105 g/ha (0.094 lb) or more, with its adjuvant; or spray it"
                + " first and wait"),
        says(
            "antagonism",
            "the same with fomesafen, which takes less",
            soy("clethodim 0.093 ai + glyphosate 1.0 ae + dicamba 0.5 ae + fomesafen 0.25 ai")
                .weed("ZEAMX", 5, 9),
            "warn: Clethodim loses 27 % to 75 % of its control on volunteer corn to a"
                + " partner in this tank; not at 0.094 lb ai/acre or more of clethodim. Expected"
                + " by its site here: 43 %. [43 %; the effective site of the house rules] raise"
                + " the clethodim to 105 g/ha (0.094 lb) or more, with its adjuvant; or spray it"
                + " first and wait"),
        says(
            "antagonism",
            "clethodim with chlorimuron and, which takes more, bentazon",
            soy("clethodim 0.125 ai + chlorimuron-ethyl 0.008 ai + bentazon 0.75 ai")
                .weed("SETFA", 3),
            "warn: Clethodim loses 10 % to 40 % of its control on giant foxtail to a"
                + " partner in this tank. Expected by its site here: 73 %. [73 %; the effective"
                + " site of the house rules] grass herbicide first and bentazon a day later; or"
                + " bentazon first and five to seven days for the grass to grow again"),
        says(
            "antagonism",
            "clethodim with chlorimuron and glufosinate, of which no number is known",
            soy("clethodim 0.125 ai + chlorimuron-ethyl 0.008 ai + glufosinate-ammonium 0.6 ai")
                .weed("SETFA", 3),
            "note: Clethodim loses 5 % to 30 % of its control on giant foxtail to a partner"
                + " in this tank. Expected by its site here: 80 %. [80 %; the effective site of"
                + " the house rules] raise the grass herbicide and add oil, or spray it a day"
                + " before or a week after"),
        says(
            "below-full-rate",
            "S-metolachlor 0.9 lb in the soil, of 1.27 lb, which are 1.33 pt",
            before(1, "soybean", "metribuzin 0.38 ai + S-metolachlor 0.9 ai")
                .field(f -> f.soil(SoilTexture.SILT_LOAM, 2.5, 6.6))
                .weed("AMAPA", 0, 9),
            "warn: S-metolachlor: 0.9 lb ai/acre is below the full rate for Palmer amaranth"
                + " here, 1.267 lb ai/acre (the use in soybean has 1.267 lb ai/acre to 1.6 lb"
                + " ai/acre). [0.9 lb ai/acre; 1.267 lb ai/acre] 1.3 pt/acre of"
                + " s-metolachlor-7.62ec where the season's limits leave room, or smaller plants"),
        says(
            "below-full-rate",
            "S-metolachlor 0.4 and 0.9 lb, more than that together",
            before(1, "soybean", "S-metolachlor 0.4 ai + S-metolachlor 0.9 ai")
                .field(f -> f.soil(SoilTexture.SILT_LOAM, 2.5, 6.6))
                .weed("AMAPA", 0, 9)),
        says(
            "below-full-rate",
            "S-metolachlor 0.4 and 0.5 lb, of which either may bring what is missing",
            before(1, "soybean", "S-metolachlor 0.4 ai + S-metolachlor 0.5 ai")
                .field(f -> f.soil(SoilTexture.SILT_LOAM, 2.5, 6.6))
                .weed("AMAPA", 0, 9),
            "warn: S-metolachlor: 0.9 lb ai/acre is below the full rate for Palmer amaranth"
                + " here, 1.267 lb ai/acre (the use in soybean has 1.267 lb ai/acre to 1.6 lb"
                + " ai/acre). [0.9 lb ai/acre; 1.267 lb ai/acre] 0.8 pt/acre of"
                + " s-metolachlor-7.62ec where the season's limits leave room, or smaller plants",
            "warn: S-metolachlor: 0.9 lb ai/acre is below the full rate for Palmer amaranth"
                + " here, 1.267 lb ai/acre (the use in soybean has 1.267 lb ai/acre to 1.6 lb"
                + " ai/acre). [0.9 lb ai/acre; 1.267 lb ai/acre] 0.9 pt/acre of"
                + " s-metolachlor-7.62ec where the season's limits leave room, or smaller plants"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysAndAsksAllOfIt(SaidCase c) {
    c.holds();
  }
}
