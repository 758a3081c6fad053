package org.swathbook.rules;

import static org.swathbook.rules.SaidCase.says;
import static org.swathbook.rules.StarterTanks.STARTER;
import static org.swathbook.rules.StarterTanks.soy;
import static org.swathbook.rules.StarterTanks.without;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.DayTerms.SprayHours;
import org.swathbook.catalog.DayTerms.TemperatureLimit;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Unit;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;
import org.swathbook.testing.Sky;

/**
 * All that the rules on a day say and ask, to the number, at their limits and on either side.
 * Limits are those of the starter catalog or an invented label's. Sunrise is at 06:00, sunset at
 * 20:45.
 */
class DayRulesSayTest {
  static Stream<SaidCase> cases() {
    return Stream.of(wind(), temperature(), inversion(), hours(), rain(), water(), neighbors())
        .flatMap(List::stream);
  }

  private static final String DICAMBA = "dicamba 0.5 ae";
  private static final String CHOLINE = "2,4-D choline 0.95 ae";
  private static final String GLYPHOSATE = "glyphosate 1.0 ae";
  private static final String GLUFOSINATE = "glufosinate-ammonium 0.6 ai";
  private static final String FOMESAFEN = "fomesafen 0.25 ai";
  private static final String CLETHODIM = "clethodim 0.125 ai";

  private static Catalog wind(Limit limit) {
    return Restated.value(STARTER, "clethodim", "terms.day.windMph", limit);
  }

  private static Catalog heat(Limit fahrenheit, boolean advice) {
    return Restated.value(
        STARTER,
        "clethodim",
        "terms.day.temperature",
        new TemperatureLimit(
            new Limit(celsius(fahrenheit.least()), false, celsius(fahrenheit.most()), false),
            advice));
  }

  private static OptionalDouble celsius(OptionalDouble f) {
    return f.isPresent()
        ? OptionalDouble.of(Unit.FAHRENHEIT.toSi(f.getAsDouble()))
        : OptionalDouble.empty();
  }

  private static MixCase unlimited(double windMph) {
    return soy(FOMESAFEN).sky(Sky.fair().wind(windMph));
  }

  private static MixCase cool(double meanF, double highF) {
    return soy(GLYPHOSATE).seen("SETFA", 3).sky(Sky.fair().means(meanF, 68).high(highF));
  }

  private static MixCase neighbor(String active, String neighbor, double from) {
    return soy(active).field(f -> f.neighbors(neighbor)).sky(Sky.fair().from(from));
  }

  private static MixCase unasked(String active, String neighbor, double from) {
    return soy(
            without(active.substring(0, active.indexOf(' ')), "terms.day.downwindBuffer"), active)
        .field(f -> f.neighbors(neighbor))
        .sky(Sky.fair().from(from));
  }

  private static List<SaidCase> wind() {
    return List.of(
        says(
            "wind",
            "14 mph with dicamba, which allows 10",
            soy(DICAMBA).sky(Sky.fair().wind(14)),
            "block: Wind of 14 mph is outside what the label of dicamba allows, 3 to 10"
                + " mph. [14 mph; 3 to 10 mph] hours with wind of 3 to 10 mph"),
        says(
            "wind",
            "2 mph with dicamba over soybean, which asks for 3",
            soy(DICAMBA).sky(Sky.fair().wind(2)),
            "block: Wind of 2 mph is outside what the label of dicamba allows, 3 to 10"
                + " mph. [2 mph; 3 to 10 mph] hours with wind of 3 to 10 mph"),
        says(
            "wind",
            "a forecast of 9 mph with dicamba",
            soy(DICAMBA).sky(Sky.fair().wind(9).forecast()),
            "warn: Wind of 9 mph is forecast, 80 % or more of what the label of dicamba"
                + " allows; the wind at the field may be above it. [9 mph; 3 to 10 mph] hours"
                + " with less than 8 mph forecast, or the wind measured at the field when you"
                + " spray"),
        says(
            "wind",
            "a wind that nobody measured",
            soy(DICAMBA).sky(Sky.fair().windUnknown()),
            "ask: wind at the field in mph [the job, or the field on the day]"),
        says(
            "wind",
            "15 mph where a label names a most alone",
            soy(wind(Limit.atMost(15)), CLETHODIM).sky(Sky.fair().wind(15))),
        says(
            "wind",
            "15.1 mph where a label names a most alone",
            soy(wind(Limit.atMost(15)), CLETHODIM).sky(Sky.fair().wind(15.1)),
            "block: Wind of 15.1 mph is outside what the label of clethodim allows, at"
                + " most 15 mph. [15.1 mph; at most 15 mph] hours with wind of at most 15 mph"),
        says(
            "wind",
            "2 mph where a label names a least alone",
            soy(wind(Limit.atLeast(2)), CLETHODIM).sky(Sky.fair().wind(2))),
        says(
            "wind",
            "1.9 mph where a label names a least alone",
            soy(wind(Limit.atLeast(2)), CLETHODIM).sky(Sky.fair().wind(1.9)),
            "block: Wind of 1.9 mph is outside what the label of clethodim allows, at"
                + " least 2 mph. [1.9 mph; at least 2 mph] hours with wind of at least 2 mph"),
        says(
            "wind",
            "a forecast of 30 mph where a label names a least alone",
            soy(wind(Limit.atLeast(2)), CLETHODIM).sky(Sky.fair().wind(30).forecast())),
        says("wind", "no label limit and 3 mph, the house's least", unlimited(3)),
        says(
            "wind",
            "no label limit and 2.9 mph",
            unlimited(2.9),
            "warn: Wind of 2.9 mph is outside the house's 3 to 10 mph. [2.9 mph; 3 to 10"
                + " mph] hours with wind of 3 to 10 mph"),
        says("wind", "no label limit and 10 mph, the house's most", unlimited(10)),
        says(
            "wind",
            "no label limit and 10.1 mph",
            unlimited(10.1),
            "warn: Wind of 10.1 mph is outside the house's 3 to 10 mph. [10.1 mph; 3 to 10"
                + " mph] hours with wind of 3 to 10 mph"),
        says(
            "wind",
            "no label limit, 8 mph with gusts of 11",
            soy(FOMESAFEN).sky(Sky.fair().wind(8).gusts(11)),
            "warn: Wind of 11 mph is outside the house's 3 to 10 mph. [11 mph; 3 to 10"
                + " mph] hours with wind of 3 to 10 mph"));
  }

  private static List<SaidCase> temperature() {
    return List.of(
        says(
            "temperature",
            "96 F where the label allows 95",
            soy(DICAMBA).sky(Sky.fair().high(96)),
            "block: At 96 F the label of dicamba forbids to spray: at most 95 F. [96 F; at"
                + " most 95 F] a cooler day",
            "warn: Above 90 F auxins move as vapor. [96 F; at most 90 F] a cooler day, or the"
                + " morning"),
        says(
            "temperature",
            "95 F where the label advises 90",
            soy(heat(Limit.atMost(90), true), CLETHODIM).sky(Sky.fair().high(95)),
            "warn: At 95 F the label of clethodim advises not to spray: at most 90 F. [95"
                + " F; at most 90 F] a cooler day"),
        says(
            "temperature",
            "90 F where the label advises 90",
            soy(heat(Limit.atMost(90), true), CLETHODIM).sky(Sky.fair().high(90))),
        says(
            "temperature",
            "50 F now where the label asks for 50",
            soy(heat(Limit.atLeast(50), false), CLETHODIM).sky(Sky.fair().high(50))),
        says(
            "temperature",
            "49 F now where the label asks for 50",
            soy(heat(Limit.atLeast(50), false), CLETHODIM).sky(Sky.fair().high(49)),
            "block: At 49 F the label of clethodim forbids to spray: at least 50 F. [49 F;"
                + " at least 50 F] a warmer hour or day"),
        says(
            "temperature",
            "49 F now where the label asks for 50 to 90",
            soy(
                    heat(
                        new Limit(OptionalDouble.of(50), false, OptionalDouble.of(90), false),
                        false),
                    CLETHODIM)
                .sky(Sky.fair().high(49)),
            "block: At 49 F the label of clethodim forbids to spray: at least 50 F. [49 F;"
                + " at least 50 F] a warmer hour or day"),
        says(
            "temperature",
            "91 F where the label asks for 50 to 90",
            soy(
                    heat(
                        new Limit(OptionalDouble.of(50), false, OptionalDouble.of(90), false),
                        false),
                    CLETHODIM)
                .sky(Sky.fair().high(91)),
            "block: At 91 F the label of clethodim forbids to spray: at most 90 F. [91 F;"
                + " at most 90 F] a cooler day"),
        says(
            "temperature",
            "a forecast of 90 F where the label asks for 50 to 90",
            soy(
                    heat(
                        new Limit(OptionalDouble.of(50), false, OptionalDouble.of(90), false),
                        false),
                    CLETHODIM)
                .sky(Sky.fair().high(90))),
        says(
            "temperature",
            "a limit and no temperature",
            soy(DICAMBA).sky(Sky.fair().temperatureUnknown()),
            "ask: temperature now, and the day's forecast high [the job, or the field on"
                + " the day]"),
        says(
            "temperature",
            "a limit and the temperature now, but no forecast",
            soy(DICAMBA).sky(Sky.fair().highUnknown()),
            "ask: the day's forecast high [the job, or the field on the day]"),
        says(
            "temperature",
            "no limit, no temperature, and an active that works where it lands",
            soy(without("fomesafen", "terms.day.temperature"), FOMESAFEN)
                .sky(Sky.fair().temperatureUnknown()),
            "ask: temperature now, and the day's forecast high [the job, or the field on"
                + " the day]"),
        says(
            "temperature",
            "no limit, no temperature, and an active that cold slows",
            soy(GLYPHOSATE).sky(Sky.fair().temperatureUnknown()),
            "ask: temperature now, and the day's forecast high [the job, or the field on"
                + " the day]"),
        says(
            "temperature",
            "a limit of clethodim, which nothing else makes ask, and no temperature",
            soy(heat(Limit.atMost(90), false), CLETHODIM).sky(Sky.fair().temperatureUnknown()),
            "ask: temperature now, and the day's forecast high [the job, or the field on"
                + " the day]"),
        says(
            "temperature",
            "91 F and a contact active that works in soil alone",
            soy(Restated.none(STARTER, "fomesafen", "terms.foliar"), FOMESAFEN)
                .sky(Sky.fair().high(91))),
        says(
            "temperature",
            "no limit, no temperature, and a graminicide",
            soy(CLETHODIM).sky(Sky.fair().temperatureUnknown())),
        says(
            "temperature",
            "80 F and a growth regulator whose limit is not known",
            soy(without("dicamba", "terms.day.temperature"), DICAMBA).sky(Sky.fair().high(80))),
        says(
            "temperature",
            "81 F and a growth regulator whose limit is not known",
            soy(without("dicamba", "terms.day.temperature"), DICAMBA).sky(Sky.fair().high(81)),
            "ask: highest temperature on the label of dicamba [label, application"
                + " restrictions; then day.temperature in catalog/ingredients/dicamba.yaml]"),
        says(
            "temperature",
            "90 F over the crop and a contact active whose limit is not known",
            soy(without("fomesafen", "terms.day.temperature"), FOMESAFEN).sky(Sky.fair().high(90))),
        says(
            "temperature",
            "91 F over the crop and a contact active whose limit is not known",
            soy(without("fomesafen", "terms.day.temperature"), FOMESAFEN).sky(Sky.fair().high(91)),
            "warn: Above 90 F contact actives burn crops. [91 F; at most 90 F] a cooler day, or"
                + " the morning",
            "ask: highest temperature on the label of fomesafen [label, application"
                + " restrictions; then day.temperature in catalog/ingredients/fomesafen.yaml]"),
        says(
            "temperature",
            "91 F before the crop and a contact active whose limit is not known",
            MixCase.in("soybean")
                .catalog(without("paraquat", "terms.day.temperature"))
                .day(-3, "", 0)
                .tank("paraquat 0.5 cation")
                .sky(Sky.fair().high(91))),
        says(
            "temperature",
            "91 F before the crop, and an auxin beside the contact active",
            MixCase.in("soybean")
                .day(-35, "", 0)
                .tank("paraquat 0.5 cation + 2,4-D ester 0.5 ae")
                .sky(Sky.fair().high(91)),
            "warn: Above 90 F auxins move as vapor. [91 F; at most 90 F] a cooler day, or the"
                + " morning",
            "warn: At 91 F the label of 2,4-D ester advises not to spray: at most 80 F. [91 F;"
                + " at most 80 F] a cooler day"),
        says(
            "temperature",
            "91 F over the crop, a contact active and an auxin",
            soy("glufosinate 0.53 ai").tank("2,4-D choline 0.95 ae").sky(Sky.fair().high(91)),
            "warn: Above 90 F contact actives burn crops and auxins move as vapor. [91 F;"
                + " at most 90 F] a cooler day, or the morning",
            "ask: highest temperature on the label of 2,4-D choline [label, application"
                + " restrictions; then day.temperature in catalog/ingredients/2-4-d-choline.yaml]",
            "ask: highest temperature on the label of glufosinate-ammonium [label, application"
                + " restrictions; then day.temperature in"
                + " catalog/ingredients/glufosinate-ammonium.yaml]"),
        says(
            "temperature",
            "before the crop nobody knows how hot it is, and heat would change nothing",
            MixCase.in("soybean")
                .catalog(without("paraquat", "terms.day.temperature"))
                .day(-3, "", 0)
                .tank("paraquat 0.5 cation")
                .sky(Sky.fair().temperatureUnknown())),
        says(
            "temperature",
            "91 F over the crop and glyphosate, whose limit is not known",
            soy(without("glyphosate", "terms.day.temperature"), GLYPHOSATE)
                .sky(Sky.fair().high(91))),
        says(
            "temperature",
            "91 F on soil before the crop",
            MixCase.in("soybean")
                .day(-1, "", 0)
                .tank("S-metolachlor 1.2 ai")
                .sky(Sky.fair().high(91))),
        says(
            "temperature",
            "59 F by day with glyphosate",
            soy(GLYPHOSATE).sky(Sky.fair().high(59).night(45)),
            "warn: Weeds that stand still in the cold take up sites 9, 10 and 27 poorly."
                + " [59 F by day; days from 60 F, nights from 40 F] three days of a mean above"
                + " 50 F"),
        says(
            "temperature",
            "39 F by night with glyphosate",
            soy(GLYPHOSATE).sky(Sky.fair().high(65).night(39)),
            "warn: Weeds that stand still in the cold take up sites 9, 10 and 27 poorly."
                + " [39 F by night; days from 60 F, nights from 40 F] three days of a mean above"
                + " 50 F"),
        says(
            "temperature",
            "39 F by night with clethodim",
            soy(CLETHODIM).sky(Sky.fair().high(65).night(39))),
        says(
            "temperature",
            "a mean of 49 F over the three days before",
            cool(49, 65),
            "warn: With a mean of 49 F over the three days before weeds hardly grow, and"
                + " what is to move in them does not. [49 F; a mean of 50 F over three days]"
                + " three days of a mean from 50 F on"),
        says(
            "temperature",
            "69 F, and nobody knows the days before",
            soy(GLYPHOSATE).seen("SETFA", 3).sky(Sky.fair().meansUnknown().high(69)),
            "ask: mean temperature of the three days before [the job, or the field on the"
                + " day]"),
        says(
            "temperature",
            "70 F, and nobody knows the days before",
            soy(GLYPHOSATE).seen("SETFA", 3).sky(Sky.fair().meansUnknown().high(70))));
  }

  private static List<SaidCase> inversion() {
    return List.of(
        says(
            "inversion",
            "observed, with a label that forbids it",
            soy(CHOLINE).sky(Sky.fair().wind(6).inversion(Optional.of(true))),
            "block: An inversion was observed, and the label of 2,4-D choline forbids"
                + " spraying into one. [an inversion; none] hours after the inversion has"
                + " lifted, with wind from 4 mph"),
        says(
            "inversion",
            "observed, with a label that does not",
            soy(Restated.none(STARTER, "clethodim", "terms.day.inversionRefused"), CLETHODIM)
                .sky(Sky.fair().inversion(Optional.of(true))),
            "warn: An inversion was observed; droplets hang in it and drift. [an"
                + " inversion; none] hours after the inversion has lifted, with wind from 4 mph"),
        says(
            "inversion",
            "not looked for, and no word of the label is known",
            soy(without("clethodim", "terms.day.inversionRefused"), CLETHODIM)
                .sky(Sky.fair().inversion(Optional.empty())),
            "ask: word on inversions on the label of clethodim [label, application"
                + " restrictions; then day.inversion in catalog/ingredients/clethodim.yaml]"),
        says(
            "inversion",
            "looked for and none there, and no word of the label is known",
            soy(without("clethodim", "terms.day.inversionRefused"), CLETHODIM)
                .sky(Sky.fair().inversion(Optional.of(false)))),
        says(
            "inversion",
            "19:50 with 3.9 mph, and nobody looked",
            soy(CHOLINE)
                .time(LocalTime.of(19, 50))
                .sky(Sky.fair().wind(3.9).inversion(Optional.empty())),
            "warn: Nobody looked for an inversion, and at 19:50 with hardly any wind one"
                + " is likely; the label of 2,4-D choline forbids spraying into one. [19:50;"
                + " 07:00 to 18:45] smoke or two thermometers that show none, or the hours 07:00"
                + " to 18:45"),
        says(
            "inversion",
            "19:50 with 4 mph, and nobody looked",
            soy(CHOLINE)
                .time(LocalTime.of(19, 50))
                .sky(Sky.fair().wind(4).inversion(Optional.empty()))),
        says(
            "inversion",
            "nobody looked, and the hour is not known",
            soy(CHOLINE).timeUnknown().sky(Sky.fair().inversion(Optional.empty())),
            "ask: whether an inversion stands, or the hour [the job, or the field on the"
                + " day]"),
        says(
            "inversion",
            "nobody looked, and the place is not known",
            soy(CHOLINE).placeUnknown().sky(Sky.fair().inversion(Optional.empty())),
            "ask: whether an inversion stands, or the place of the field [the job, or the"
                + " field on the day]"),
        says(
            "inversion",
            "nobody looked, and nothing of it is known",
            soy(CHOLINE)
                .timeUnknown()
                .placeUnknown()
                .sky(Sky.fair().windUnknown().inversion(Optional.empty())),
            "ask: whether an inversion stands, or the hour, the place of the field and the"
                + " wind [the job, or the field on the day]"));
  }

  private static List<SaidCase> hours() {
    return List.of(
        says(
            "time-of-day",
            "dicamba at 06:59",
            soy(DICAMBA).time(LocalTime.of(6, 59)),
            "block: 06:59 is too early for dicamba, which is sprayed from 07:00 to 18:45"
                + " on that day at this field. [06:59; 07:00 to 18:45] the hours 07:00 to 18:45"),
        says(
            "time-of-day",
            "dicamba at 18:46",
            soy(DICAMBA).time(LocalTime.of(18, 46)),
            "block: 18:46 is too late for dicamba, which is sprayed from 07:00 to 18:45 on"
                + " that day at this field. [18:46; 07:00 to 18:45] the hours 07:00 to 18:45"),
        says(
            "time-of-day",
            "glufosinate at 10:00, four hours from sunrise, as is advised",
            soy(GLUFOSINATE).time(LocalTime.of(10, 0))),
        says(
            "time-of-day",
            "glufosinate at 09:59",
            soy(GLUFOSINATE).time(LocalTime.of(9, 59)),
            "warn: 09:59 is too early for glufosinate-ammonium, which is sprayed from"
                + " 10:00 to 16:45 on that day at this field. [09:59; 10:00 to 16:45] the hours"
                + " 10:00 to 16:45"),
        says(
            "time-of-day",
            "glufosinate at 16:45, four hours to sunset",
            soy(GLUFOSINATE).time(LocalTime.of(16, 45))),
        says(
            "time-of-day",
            "glufosinate at 16:46",
            soy(GLUFOSINATE).time(LocalTime.of(16, 46)),
            "warn: 16:46 is too late for glufosinate-ammonium, which is sprayed from 10:00"
                + " to 16:45 on that day at this field. [16:46; 10:00 to 16:45] the hours 10:00"
                + " to 16:45"),
        says(
            "time-of-day",
            "a label of an hour and a half after sunrise to an hour and a half before sunset, at 07:29",
            soy(
                    Restated.value(
                        STARTER, "clethodim", "terms.day.hours", new SprayHours(1.5, 1.5, false)),
                    CLETHODIM)
                .time(LocalTime.of(7, 29)),
            "block: 07:29 is too early for clethodim, which is sprayed from 07:30 to 19:15"
                + " on that day at this field. [07:29; 07:30 to 19:15] the hours 07:30 to 19:15"),
        says(
            "time-of-day",
            "an hour that is not known",
            soy(DICAMBA).timeUnknown(),
            "ask: time of spraying [the job, or the field on the day]"),
        says(
            "time-of-day",
            "a place that is not known",
            soy(DICAMBA).placeUnknown(),
            "ask: sunrise and sunset: lat, lon and state in fields.csv [the job, or the"
                + " field on the day]"),
        says(
            "time-of-day",
            "neither hour nor place, and a label without hours",
            soy(CLETHODIM).timeUnknown().placeUnknown()),
        says(
            "time-of-day",
            "hours of glufosinate not known, at 10:00",
            soy(without("glufosinate-ammonium", "terms.day.hours"), GLUFOSINATE)
                .time(LocalTime.of(10, 0))),
        says(
            "time-of-day",
            "hours of glufosinate not known, at 09:59",
            soy(without("glufosinate-ammonium", "terms.day.hours"), GLUFOSINATE)
                .time(LocalTime.of(9, 59)),
            "ask: hours of the day on the label of glufosinate-ammonium [label,"
                + " application restrictions; then day.hours in"
                + " catalog/ingredients/glufosinate-ammonium.yaml]"),
        says(
            "time-of-day",
            "hours of glufosinate not known, at 16:45",
            soy(without("glufosinate-ammonium", "terms.day.hours"), GLUFOSINATE)
                .time(LocalTime.of(16, 45))),
        says(
            "time-of-day",
            "hours of glufosinate not known, at 16:46",
            soy(without("glufosinate-ammonium", "terms.day.hours"), GLUFOSINATE)
                .time(LocalTime.of(16, 46)),
            "ask: hours of the day on the label of glufosinate-ammonium [label,"
                + " application restrictions; then day.hours in"
                + " catalog/ingredients/glufosinate-ammonium.yaml]"),
        says(
            "time-of-day",
            "hours of glufosinate not known, nor the hour",
            soy(without("glufosinate-ammonium", "terms.day.hours"), GLUFOSINATE).timeUnknown(),
            "ask: hours of the day on the label of glufosinate-ammonium [label,"
                + " application restrictions; then day.hours in"
                + " catalog/ingredients/glufosinate-ammonium.yaml]"),
        says(
            "time-of-day",
            "hours of glufosinate not known, nor the place",
            soy(without("glufosinate-ammonium", "terms.day.hours"), GLUFOSINATE).placeUnknown(),
            "ask: hours of the day on the label of glufosinate-ammonium [label,"
                + " application restrictions; then day.hours in"
                + " catalog/ingredients/glufosinate-ammonium.yaml]"),
        says(
            "time-of-day",
            "hours of dicamba over its trait not known, at 08:00",
            soy(without("dicamba", "terms.day.hours"), DICAMBA).time(LocalTime.of(8, 0)),
            "ask: hours of the day on the label of dicamba [label, application"
                + " restrictions; then day.hours in catalog/ingredients/dicamba.yaml]"),
        says(
            "time-of-day",
            "hours of dicamba over corn, which needs no trait, not known",
            MixCase.in("corn")
                .catalog(without("dicamba", "terms.day.hours"))
                .day(20, "V3", 6)
                .tank("dicamba 0.25 ae")
                .time(LocalTime.of(8, 0))),
        says(
            "time-of-day",
            "hours of 2,4-D choline not known, 40 days before soybean",
            MixCase.in("soybean", "2,4-D")
                .catalog(without("2,4-D choline", "terms.day.hours"))
                .day(-40, "", 0)
                .tank(CHOLINE)
                .time(LocalTime.of(8, 0))),
        says(
            "time-of-day",
            "hours of clethodim not known, at 08:00",
            soy(without("clethodim", "terms.day.hours"), CLETHODIM).time(LocalTime.of(8, 0))));
  }

  private static List<SaidCase> rain() {
    return List.of(
        says(
            "rain-too-soon",
            "glyphosate with rain in 4 hours, which it needs",
            soy(GLYPHOSATE).sky(Sky.fair().rain(4, 0.2))),
        says(
            "rain-too-soon",
            "glyphosate with rain in 3.9 hours",
            soy(GLYPHOSATE).sky(Sky.fair().rain(3.9, 0.2)),
            "note: Glyphosate needs 4 hours without rain; it comes in 3.9. [3.9 h; 4 h] a"
                + " day without rain for so long, or a partner that is taken up sooner"),
        says(
            "rain-too-soon",
            "glyphosate on Palmer amaranth with rain in 3.9 hours",
            soy(GLYPHOSATE).weed("AMAPA", 3).sky(Sky.fair().rain(3.9, 0.2)),
            "warn: Glyphosate needs 4 hours without rain; it comes in 3.9. [3.9 h; 4 h] a"
                + " day without rain for so long, or a partner that is taken up sooner"),
        says(
            "rain-too-soon",
            "clethodim beside glyphosate on Palmer amaranth with rain in half an hour",
            soy("clethodim 0.125 ai + glyphosate 1.0 ae")
                .weed("AMAPA", 3)
                .sky(Sky.fair().rain(0.5, 0.2)),
            "warn: Glyphosate needs 4 hours without rain; it comes in 0.5. [0.5 h; 4 h] a"
                + " day without rain for so long, or a partner that is taken up sooner",
            "note: Clethodim needs 1 hour without rain; it comes in 0.5. [0.5 h; 1 h] a"
                + " day without rain for so long, or a partner that is taken up sooner"),
        says(
            "rain-too-soon",
            "half an inch in 48 hours with 2,4-D choline",
            soy(CHOLINE).sky(Sky.fair().rain(40, 0.5)),
            "block: The forecast brings 0.5 in of rain, and the label of 2,4-D choline"
                + " forbids spraying when rain that runs off is ahead within 48 hours. [0.5 in;"
                + " less than 0.5 in within 48 h] a day with less rain ahead"),
        says(
            "rain-too-soon",
            "half an inch where the label looks 24 hours ahead",
            soy(Restated.value(STARTER, "clethodim", "terms.day.runoffRainHours", 24.0), CLETHODIM)
                .sky(Sky.fair().rain(20, 0.5)),
            "block: The forecast brings 0.5 in of rain, and the label of clethodim forbids"
                + " spraying when rain that runs off is ahead within 24 hours. [0.5 in; less"
                + " than 0.5 in within 24 h] a day with less rain ahead"),
        says(
            "rain-too-soon",
            "half an inch on the second day where the label looks 24 hours ahead",
            soy(Restated.value(STARTER, "clethodim", "terms.day.runoffRainHours", 24.0), CLETHODIM)
                .sky(Sky.fair().rain(40, 0.5))),
        says(
            "rain-too-soon",
            "no forecast where the label looks 24 hours ahead",
            soy(Restated.value(STARTER, "clethodim", "terms.day.runoffRainHours", 24.0), CLETHODIM)
                .sky(Sky.fair().rainUnknown()),
            "ask: hours to the next rain [the job, or the field on the day]",
            "ask: rain forecast for the next 24 and 48 hours [the job, or the field on the"
                + " day]"),
        says(
            "rain-too-soon",
            "no forecast where the label looks 48 hours ahead",
            soy(CHOLINE).sky(Sky.fair().rainUnknown()),
            "ask: hours to the next rain [the job, or the field on the day]",
            "ask: rain forecast for the next 24 and 48 hours [the job, or the field on the"
                + " day]"),
        says(
            "rain-too-soon",
            "no forecast for glyphosate",
            soy(GLYPHOSATE).sky(Sky.fair().rainUnknown()),
            "ask: hours to the next rain [the job, or the field on the day]"),
        says(
            "rain-too-soon",
            "a forecast that ends after 4 dry hours, for glyphosate",
            soy(GLYPHOSATE).sky(Sky.fair().dryFor(4))),
        says(
            "rain-too-soon",
            "a forecast that ends after 3.9 dry hours, for glyphosate",
            soy(GLYPHOSATE).sky(Sky.fair().dryFor(3.9)),
            "ask: hours to the next rain [the job, or the field on the day]"),
        says(
            "rain-too-soon",
            "activity through leaves not known",
            soy(without("clethodim", "terms.foliar"), CLETHODIM),
            "ask: activity through leaves and rain-free hours of clethodim [label,"
                + " application restrictions; then foliar in catalog/ingredients/clethodim.yaml]"),
        says(
            "rain-too-soon",
            "rain-free hours not known",
            soy(
                Restated.value(
                    STARTER, "clethodim", "terms.foliar", new Foliar(Stated.unknown("rainfast"))),
                CLETHODIM),
            "ask: rain-free hours of clethodim [label, application restrictions; then"
                + " foliar.rainfast in catalog/ingredients/clethodim.yaml]"),
        says(
            "rain-too-soon",
            "a growth regulator whose word on runoff is not known, and half an inch ahead",
            soy(without("dicamba", "terms.day.runoffRainHours"), DICAMBA)
                .sky(Sky.fair().rain(40, 0.5)),
            "ask: word on rain that runs off, on the label of dicamba [label, application"
                + " restrictions; then day.runoffRain in catalog/ingredients/dicamba.yaml]"),
        says(
            "rain-too-soon",
            "a growth regulator whose word on runoff is not known, and 0.49 in ahead",
            soy(without("dicamba", "terms.day.runoffRainHours"), DICAMBA)
                .sky(Sky.fair().rain(40, 0.49))),
        says(
            "rain-too-soon",
            "atrazine, which is kept from water, its word on runoff not known, and an inch ahead",
            MixCase.in("corn")
                .catalog(without("atrazine", "terms.day.runoffRainHours"))
                .day(20, "V3", 6)
                .tank("atrazine 1.0 ai")
                .sky(Sky.fair().rain(40, 1)),
            "ask: word on rain that runs off, on the label of atrazine [label, application"
                + " restrictions; then day.runoffRain in catalog/ingredients/atrazine.yaml]"),
        says(
            "rain-too-soon",
            "clethodim, kept from no water, its word on runoff not known, and an inch ahead",
            soy(
                    Restated.none(
                        without("clethodim", "terms.day.runoffRainHours"),
                        "clethodim",
                        "terms.setbacks"),
                    CLETHODIM)
                .sky(Sky.fair().rain(40, 1))),
        says(
            "rain-too-soon",
            "clethodim, neither setback nor word on runoff known, and an inch ahead",
            soy(
                    Restated.without(
                        without("clethodim", "terms.day.runoffRainHours"),
                        "clethodim",
                        "terms.setbacks"),
                    CLETHODIM)
                .sky(Sky.fair().rain(40, 1)),
            "ask: word on rain that runs off, on the label of clethodim [label,"
                + " application restrictions; then day.runoffRain in"
                + " catalog/ingredients/clethodim.yaml]"),
        says(
            "rain-too-soon",
            "half an inch in 24 hours, no forecast beyond, where the label looks 48 hours ahead",
            soy(CHOLINE).sky(Sky.fair().forecastOf(0.5, Double.NaN)),
            "block: The forecast brings 0.5 in of rain, and the label of 2,4-D choline"
                + " forbids spraying when rain that runs off is ahead within 48 hours. [0.5 in;"
                + " less than 0.5 in within 48 h] a day with less rain ahead",
            "ask: rain forecast for the next 24 and 48 hours [the job, or the field on the"
                + " day]"),
        says(
            "rain-too-soon",
            "0.4 in within 24 hours and 0.6 within 48, where the label looks 48 hours ahead",
            soy(CHOLINE).sky(Sky.fair().forecastOf(0.4, 0.6)),
            "block: The forecast brings 0.6 in of rain, and the label of 2,4-D choline"
                + " forbids spraying when rain that runs off is ahead within 48 hours. [0.6 in;"
                + " less than 0.5 in within 48 h] a day with less rain ahead"),
        says(
            "rain-too-soon",
            "0.2 in within 48 hours, no shorter forecast, where the label looks 24 hours ahead",
            soy(Restated.value(STARTER, "clethodim", "terms.day.runoffRainHours", 24.0), CLETHODIM)
                .sky(Sky.fair().forecastOf(Double.NaN, 0.2))),
        says(
            "rain-too-soon",
            "0.6 in within 48 hours, no shorter forecast, where the label looks 24 hours ahead",
            soy(Restated.value(STARTER, "clethodim", "terms.day.runoffRainHours", 24.0), CLETHODIM)
                .sky(Sky.fair().forecastOf(Double.NaN, 0.6)),
            "block: The forecast brings 0.6 in of rain, and the label of clethodim forbids"
                + " spraying when rain that runs off is ahead within 24 hours. [0.6 in; less"
                + " than 0.5 in within 24 h] a day with less rain ahead"),
        says(
            "rain-too-soon",
            "half an inch in 24 hours, no forecast beyond, and a word on runoff that is not known",
            soy(without("dicamba", "terms.day.runoffRainHours"), DICAMBA)
                .sky(Sky.fair().forecastOf(0.5, Double.NaN)),
            "ask: word on rain that runs off, on the label of dicamba [label, application"
                + " restrictions; then day.runoffRain in catalog/ingredients/dicamba.yaml]"),
        says(
            "rain-too-soon",
            "no forecast, and a word on runoff that is not known",
            soy(without("dicamba", "terms.day.runoffRainHours"), DICAMBA)
                .sky(Sky.fair().forecastOf(Double.NaN, Double.NaN))));
  }

  private static List<SaidCase> water() {
    return List.of(
        says(
            "water-quality",
            "glyphosate in 600 ppm without a conditioner",
            soy(GLYPHOSATE).hardness(600),
            "warn: Water with 600 ppm CaCO3 ties up glyphosate, and no conditioner is"
                + " in the tank. [600 ppm CaCO3; 150 ppm CaCO3] ammonium-sulfate at"
                + " 8.5 lb/100 gal, first into the water"),
        says("water-quality", "glyphosate in water of 5 ppm of iron", soy(GLYPHOSATE).iron(5)),
        says(
            "water-quality",
            "glyphosate in water of 5.1 ppm of iron",
            soy(GLYPHOSATE).iron(5.1),
            "warn: Water with 5.1 ppm of iron ties up glyphosate, and no conditioner is in"
                + " the tank. [5.1 ppm of iron; 5 ppm of iron] ammonium-sulfate at 8.5 lb/100"
                + " gal, first into the water"),
        says(
            "water-quality",
            "glyphosate in water that was not tested",
            soy(GLYPHOSATE).waterUntested(),
            "note: The water was not tested; hard water ties up glyphosate."),
        says(
            "water-quality",
            "clethodim in water that was not tested",
            soy(CLETHODIM).waterUntested(),
            "note: The water was not tested; hard water ties up clethodim."),
        says(
            "water-quality",
            "flumioxazin in water that was not tested",
            MixCase.in("soybean").day(-20, "", 0).tank("flumioxazin 0.06 ai").waterUntested(),
            "note: The pH of the water was not measured, and flumioxazin keeps only in" + " some."),
        says(
            "water-quality",
            "glyphosate with too little ammonium sulfate at 600 ppm",
            soy(GLYPHOSATE).adjuvant("ammonium-sulfate", "2.1 lb/100 gal").hardness(600),
            "warn: Water with 600 ppm CaCO3 takes 2.16 lb in 100 gal of ammonium"
                + " sulfate before any is left for glyphosate. [2.1 lb in 100 gal; at least 2.16"
                + " lb in 100 gal] ammonium-sulfate at 8.5 lb/100 gal, first into the water"),
        says(
            "water-quality",
            "glyphosate with ammonium sulfate at a rate that says nothing",
            soy(GLYPHOSATE).adjuvant("ammonium-sulfate", "by the label").hardness(600)),
        says(
            "water-quality",
            "dicamba over soybean in 600 ppm, which refuses ammonium",
            soy(DICAMBA).hardness(600),
            "warn: Water with 600 ppm CaCO3 ties up dicamba, and no conditioner is in"
                + " the tank. [600 ppm CaCO3; 150 ppm CaCO3] water-conditioner, one"
                + " without ammonium, which dicamba refuses"),
        says(
            "water-quality",
            "dicamba and glyphosate in 600 ppm",
            soy("dicamba 0.5 ae + glyphosate 1.0 ae").hardness(600),
            "warn: Water with 600 ppm CaCO3 ties up dicamba and glyphosate, and no"
                + " conditioner is in the tank. [600 ppm CaCO3; 150 ppm CaCO3]"
                + " water-conditioner, one without ammonium, which dicamba refuses"),
        says(
            "water-quality",
            "flumioxazin in water of pH 7.1",
            MixCase.in("soybean").day(-20, "", 0).tank("flumioxazin 0.06 ai").ph(7.1),
            "warn: Water of pH 7.1 is outside what flumioxazin keeps in, pH 5 to 7. [pH"
                + " 7.1; pH 5 to 7] other water, or a buffer that brings it there and that the"
                + " labels take; else spray the tank as soon as it is mixed"),
        says(
            "water-quality",
            "dicamba in water of pH 4.9",
            soy(DICAMBA).ph(4.9),
            "warn: Water of pH 4.9 is outside what dicamba keeps in, pH at least 5. [pH"
                + " 4.9; pH at least 5] other water, or a buffer that brings it there and that"
                + " the labels take; else spray the tank as soon as it is mixed"),
        says(
            "water-quality",
            "glyphosate and imazethapyr, of which no range is known, in water of pH 8.1",
            soy("glyphosate 1.0 ae + imazethapyr 0.0625 ai").ph(8.1),
            "note: In what pH of water glyphosate and imazethapyr keep is not known, and"
                + " this water has 8.1; look at the label, and spray the tank soon after it is"
                + " mixed."),
        says(
            "water-quality",
            "glyphosate, of which no range is known, in water of pH 5",
            soy(GLYPHOSATE).ph(5)),
        says(
            "water-quality",
            "glyphosate, of which no range is known, in water of pH 4.9",
            soy(GLYPHOSATE).ph(4.9),
            "note: In what pH of water glyphosate keeps is not known, and this water has"
                + " 4.9; look at the label, and spray the tank soon after it is mixed."),
        says(
            "water-quality",
            "a label of pH below 7 in water of 7",
            soy(Restated.value(STARTER, "clethodim", "terms.waterPh", Limit.below(7)), CLETHODIM)
                .ph(7),
            "warn: Water of pH 7 is outside what clethodim keeps in, pH below 7. [pH 7; pH"
                + " below 7] other water, or a buffer that brings it there and that the labels"
                + " take; else spray the tank as soon as it is mixed"),
        says(
            "water-quality",
            "a label of pH above 5 in water of 5",
            soy(Restated.value(STARTER, "clethodim", "terms.waterPh", Limit.above(5)), CLETHODIM)
                .ph(5),
            "warn: Water of pH 5 is outside what clethodim keeps in, pH above 5. [pH 5; pH"
                + " above 5] other water, or a buffer that brings it there and that the labels"
                + " take; else spray the tank as soon as it is mixed"),
        says(
            "water-quality",
            "a label of pH from 5 on in water of 4.9",
            soy(Restated.value(STARTER, "clethodim", "terms.waterPh", Limit.atLeast(5)), CLETHODIM)
                .ph(4.9),
            "warn: Water of pH 4.9 is outside what clethodim keeps in, pH at least 5. [pH"
                + " 4.9; pH at least 5] other water, or a buffer that brings it there and that"
                + " the labels take; else spray the tank as soon as it is mixed"),
        says(
            "water-quality",
            "a label of pH up to 8 in water of 8.1",
            soy(Restated.value(STARTER, "clethodim", "terms.waterPh", Limit.atMost(8)), CLETHODIM)
                .ph(8.1),
            "warn: Water of pH 8.1 is outside what clethodim keeps in, pH at most 8. [pH"
                + " 8.1; pH at most 8] other water, or a buffer that brings it there and that"
                + " the labels take; else spray the tank as soon as it is mixed"));
  }

  private static List<SaidCase> neighbors() {
    return List.of(
        says(
            "sensitive-neighbor",
            "dicamba toward a vineyard at 1500 ft",
            neighbor(DICAMBA, "vineyard NE 1500 ft", 225),
            "block: The wind blows toward the neighbor 'vineyard', 1500 ft away, and"
                + " dicamba must not get there. [1500 ft downwind; no wind toward sensitive"
                + " plants] wind that blows away from it, or a partner of another site"),
        says(
            "sensitive-neighbor",
            "dicamba toward a vineyard a mile away",
            neighbor(DICAMBA, "vineyard NE 5280 ft", 225),
            "block: The wind blows toward the neighbor 'vineyard', 5280 ft away, and"
                + " dicamba must not get there. [5280 ft downwind; no wind toward sensitive"
                + " plants] wind that blows away from it, or a partner of another site"),
        says(
            "sensitive-neighbor",
            "dicamba toward a vineyard farther than a mile",
            neighbor(DICAMBA, "vineyard NE 5281 ft", 225)),
        says(
            "sensitive-neighbor",
            "dicamba toward a shelterbelt a quarter of a mile away",
            neighbor(DICAMBA, "shelterbelt N 1320 ft", 180),
            "warn: The wind blows toward the neighbor 'shelterbelt', 1320 ft away, and"
                + " dicamba must not get there. [1320 ft downwind; a quarter of a mile] wind"
                + " that blows away from it, or a partner of another site"),
        says(
            "sensitive-neighbor",
            "dicamba toward a shelterbelt inside its buffer",
            neighbor(DICAMBA, "shelterbelt N 140 ft", 180),
            "block: The wind blows toward the neighbor 'shelterbelt', 140 ft away, and"
                + " dicamba must not get there. [140 ft downwind; 240 ft] wind that blows away"
                + " from it, or a strip of 100 ft on that side left untreated, about 4.3 acres"
                + " of a square field, or a partner of another site"),
        says(
            "sensitive-neighbor",
            "dicamba toward a shelterbelt on a corner inside its buffer",
            neighbor(DICAMBA, "shelterbelt NE 140 ft", 225),
            "block: The wind blows toward the neighbor 'shelterbelt', 140 ft away, and"
                + " dicamba must not get there. [140 ft downwind; 240 ft] wind that blows away"
                + " from it, or a strip of 100 ft on that side left untreated, about 8.3 acres"
                + " of a square field, or a partner of another site"),
        says(
            "sensitive-neighbor",
            "dicamba toward a shelterbelt two points off north",
            neighbor(DICAMBA, "shelterbelt NNE 140 ft", 202),
            "block: The wind blows toward the neighbor 'shelterbelt', 140 ft away, and"
                + " dicamba must not get there. [140 ft downwind; 240 ft] wind that blows away"
                + " from it, or a strip of 100 ft on that side left untreated, about 8.3 acres"
                + " of a square field, or a partner of another site"),
        says(
            "sensitive-neighbor",
            "dicamba toward a shelterbelt beside a field no wider than the strip",
            neighbor(DICAMBA, "shelterbelt N 1 ft", 180).field(f -> f.acres(1)),
            "block: The wind blows toward the neighbor 'shelterbelt', 1 ft away, and"
                + " dicamba must not get there. [1 ft downwind; 240 ft] wind that blows away"
                + " from it, or not this field: a strip of 239 ft is wider than it, or a partner"
                + " of another site"),
        says(
            "sensitive-neighbor",
            "dicamba, no neighbor listed",
            soy(DICAMBA),
            "note: No neighbor of this field is listed; labels keep a distance downwind"
                + " for dicamba, so look what lies there."),
        says("sensitive-neighbor", "clethodim, no neighbor listed", soy(CLETHODIM)),
        says(
            "sensitive-neighbor",
            "dicamba near a vineyard a mile away, wind not known",
            soy(DICAMBA)
                .field(f -> f.neighbors("vineyard NE 5280 ft"))
                .sky(Sky.fair().directionUnknown()),
            "warn: Where the wind comes from is not known; vineyard, 5280 ft away, may lie"
                + " downwind. [direction unknown; wind away from it] write windFrom into the"
                + " job, and spray with wind away from it"),
        says(
            "sensitive-neighbor",
            "dicamba near a vineyard farther than a mile, wind not known",
            soy(DICAMBA)
                .field(f -> f.neighbors("vineyard NE 5281 ft"))
                .sky(Sky.fair().directionUnknown())),
        says(
            "sensitive-neighbor",
            "dicamba near a shelterbelt a quarter of a mile away, wind not known",
            soy(DICAMBA)
                .field(f -> f.neighbors("shelterbelt N 1320 ft"))
                .sky(Sky.fair().directionUnknown()),
            "warn: Where the wind comes from is not known; shelterbelt, 1320 ft away, may"
                + " lie downwind. [direction unknown; wind away from it] write windFrom into the"
                + " job, and spray with wind away from it"),
        says(
            "sensitive-neighbor",
            "dicamba near a shelterbelt farther than that, wind not known",
            soy(DICAMBA)
                .field(f -> f.neighbors("shelterbelt N 1321 ft"))
                .sky(Sky.fair().directionUnknown())),
        says(
            "sensitive-neighbor",
            "fomesafen, no buffer known, toward a vineyard a quarter of a mile away",
            unasked(FOMESAFEN, "vineyard NE 1320 ft", 225),
            "ask: distance downwind that the label keeps of fomesafen [label, application"
                + " restrictions; then day.buffer in catalog/ingredients/fomesafen.yaml]"),
        says(
            "sensitive-neighbor",
            "fomesafen, no buffer known, toward a vineyard farther than that",
            unasked(FOMESAFEN, "vineyard NE 1321 ft", 225)),
        says(
            "sensitive-neighbor",
            "fomesafen, no buffer known, past a vineyard",
            unasked(FOMESAFEN, "vineyard NE 1320 ft", 45)),
        says(
            "sensitive-neighbor",
            "fomesafen, no buffer known, toward a shelterbelt",
            unasked(FOMESAFEN, "shelterbelt NE 300 ft", 225)),
        says(
            "sensitive-neighbor",
            "fomesafen, no buffer known, near a vineyard, wind not known",
            unasked(FOMESAFEN, "vineyard NE 1320 ft", 225).sky(Sky.fair().directionUnknown()),
            "ask: distance downwind that the label keeps of fomesafen [label, application"
                + " restrictions; then day.buffer in catalog/ingredients/fomesafen.yaml]"),
        says(
            "sensitive-neighbor",
            "glyphosate, no buffer known, toward a vineyard",
            unasked(GLYPHOSATE, "vineyard NE 300 ft", 225)),
        says(
            "sensitive-neighbor",
            "dicamba, no buffer known, toward a vineyard",
            unasked(DICAMBA, "vineyard NE 300 ft", 225),
            "block: The wind blows toward the neighbor 'vineyard', 300 ft away, and dicamba"
                + " must not get there. [300 ft downwind; no wind toward sensitive plants] wind that blows"
                + " away from it, or a partner of another site",
            "ask: distance downwind that the label keeps of dicamba [label, application"
                + " restrictions; then day.buffer in catalog/ingredients/dicamba.yaml]"),
        says(
            "sensitive-neighbor",
            "flumioxazin on soil, no buffer known, toward a vineyard",
            MixCase.in("soybean")
                .catalog(without("flumioxazin", "terms.day.downwindBuffer"))
                .day(0, "", 0)
                .tank("flumioxazin 0.08 ai")
                .field(f -> f.neighbors("vineyard NE 300 ft"))
                .sky(Sky.fair().from(225)),
            "ask: distance downwind that the label keeps of flumioxazin [label,"
                + " application restrictions; then day.buffer in"
                + " catalog/ingredients/flumioxazin.yaml]"),
        says(
            "sensitive-neighbor",
            "clomazone, distance not known, toward an orchard",
            MixCase.in("soybean")
                .catalog(without("clomazone", "terms.day.downwindBuffer"))
                .day(-1, "", 0)
                .tank("clomazone 0.75 ai")
                .field(f -> f.neighbors("orchard E 1320 ft"))
                .sky(Sky.fair().from(270)),
            "warn: The wind blows toward the neighbor 'orchard', 1320 ft away, and"
                + " clomazone must not get there. [1320 ft downwind; a quarter of a mile] wind"
                + " that blows away from it, or a partner of another site",
            "ask: distance downwind that the label keeps of clomazone [label, application"
                + " restrictions; then day.buffer in catalog/ingredients/clomazone.yaml]"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysAndAsksAllOfIt(SaidCase c) {
    c.holds();
  }
}
