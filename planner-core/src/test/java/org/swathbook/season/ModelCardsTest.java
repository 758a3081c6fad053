package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.model.Constant;
import org.swathbook.model.ModelCard;
import org.swathbook.weather.WeatherDay;

/** The cards are whole: every number of a model stands on one, and every card says where from. */
class ModelCardsTest {

  /** Numbers that are no part of a model, each with why. */
  private static final Set<String> NO_MODEL =
      Set.of(
          // logarithms of the three points themselves, and the limit that follows from them
          "EmergenceCurve.K10",
          "EmergenceCurve.K50",
          "EmergenceCurve.K90",
          "EmergenceCurve.RATIO",
          // how many tanks, soils, seasons, crops and weeds are kept in memory
          "Effects.TANKS_KEPT",
          "SharedEffects.TABLES_KEPT",
          "SharedEffects.SOILS_KEPT",
          "SharedOutdoors.SOILS_KEPT",
          "SharedOutdoors.SEASONS_KEPT",
          "SeasonHeat.SOILS_KEPT",
          "SeasonHeat.CROPS_KEPT",
          "SeasonHeat.WEEDS_KEPT",
          // what is more than any rounding, and stands for no end, in bounds of the search
          "ExposureBounds.ROUNDING",
          "HeightCounts.ROUNDING",
          "ControlBounds.ALL",
          "SeasonReach.ALL",
          // where the touching point of a tangent is sought, and how finely
          "LossEnvelope.LOWEST",
          "LossEnvelope.HALVINGS",
          // more numbers of sites than there are
          "ControlBounds.SITES",
          // how finely a look-up is cut
          "HeightClock.SLICES_PER_CLASS");

  @Test
  void everyCardSaysWhatItIsAndWhereItIsFrom() {
    for (ModelCard c : ModelPageTest.cards()) {
      assertThat(c.what()).as("%s", c).isNotBlank();
      assertThat(c.equation()).as("%s", c).isNotBlank();
      assertThat(c.source())
          .as("%s: a published year, or default, from memory, catalog, definition", c.what())
          .containsPattern("(?i)(18|19|20)[0-9]{2}|default|from memory|catalog|definition");
    }
  }

  @Test
  void everyNumberOfAModelStandsOnACardOfItsClass() throws Exception {
    List<String> missing = new ArrayList<>();
    int numbers = 0;
    for (Class<?> type : models()) {
      for (Field field : type.getDeclaredFields()) {
        String name = type.getSimpleName() + "." + field.getName();
        if (isNumber(field) && !NO_MODEL.contains(name)) {
          numbers++;
          field.setAccessible(true);
          double value = ((Number) field.get(null)).doubleValue();
          if (constants(type).noneMatch(c -> c.value() == value)) {
            missing.add(name + " = " + value);
          }
        }
      }
    }

    assertThat(missing).as("numbers of models that stand on no card").isEmpty();
    assertThat(numbers).as("numbers found at all").isGreaterThan(40);
  }

  private static Stream<Constant> constants(Class<?> type) {
    return ModelPageTest.cards().stream()
        .filter(c -> c.model() == type)
        .flatMap(c -> c.constants().stream());
  }

  private static boolean isNumber(Field field) {
    Class<?> t = field.getType();
    return Modifier.isStatic(field.getModifiers())
        && Modifier.isFinal(field.getModifiers())
        && !field.isSynthetic()
        && (t == double.class || t == int.class || t == long.class);
  }

  /** All classes of the packages that compute something from weather, growth, doses and passes. */
  private static List<Class<?>> models()
      throws IOException, URISyntaxException, ClassNotFoundException {
    Path root =
        Path.of(WeatherDay.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    List<Class<?>> out = new ArrayList<>();
    for (String part : List.of("weather", "growth", "control", "season")) {
      try (Stream<Path> files = Files.walk(root.resolve("org/swathbook").resolve(part))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
          String name = root.relativize(file).toString().replace(File.separatorChar, '.');
          if (!name.endsWith("package-info.class")) {
            out.add(Class.forName(name.substring(0, name.length() - ".class".length())));
          }
        }
      }
    }
    assertThat(out).hasSizeGreaterThan(60);
    return out;
  }
}
