package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.StationWeather;

/**
 * Fields of one soil under one weather have the very same soil through a season, by which others
 * keep what they make of it; another soil is another one. Each is what a field alone has.
 */
class SharedSoilTest {
  private static final StationWeather STATION =
      SyntheticWeather.station(
          "made",
          2027,
          d ->
              SyntheticWeather.day(
                  d, d.getMonthValue() % 11 == 1 ? -2 : 16, d.getDayOfYear() % 7 == 0 ? 9 : 0));

  private static Field field(String planted, SoilTexture texture, double latitude) {
    return FieldBuilder.of("T", "soybean", planted)
        .soil(texture, 2, 6.5)
        .station("made", latitude)
        .rowInches(30)
        .build();
  }

  private static SoilCourse soil(Field field, SharedOutdoors shared) {
    Book book =
        Fixtures.bookWith(STATION, field, Fixtures.weed("T", "AMAPA", 50, DriverKind.YES, 0));
    return TraceBuilder.ofSeason(book, field, shared).years().get(0).soil();
  }

  @Test
  void fieldsOfOneSoilHaveTheVerySame() {
    SharedOutdoors shared = new SharedOutdoors();
    SoilCourse first = soil(field("2027-05-10", SoilTexture.SILT_LOAM, 40.7), shared);

    assertThat(soil(field("2027-06-01", SoilTexture.SILT_LOAM, 40.7), shared)).isSameAs(first);
    assertThat(soil(field("2027-05-10", SoilTexture.SAND, 40.7), shared)).isNotSameAs(first);
    assertThat(soil(field("2027-05-10", SoilTexture.SILT_LOAM, 44.2), shared)).isNotSameAs(first);
  }

  @Test
  void itIsThatOfAFieldAlone() {
    SharedOutdoors shared = new SharedOutdoors();
    for (SoilTexture texture : SoilTexture.values()) {
      Field field = field("2027-05-10", texture, 40.7);
      SoilCourse among = soil(field, shared);
      SoilCourse alone = soil(field, new SharedOutdoors());

      assertThat(among).isNotSameAs(alone);
      for (int day = 1; day < alone.days(); day++) {
        assertThat(among.age(0, day)).as("%s, day %d", texture, day).isEqualTo(alone.age(0, day));
        assertThat(among.rainMm(day)).isEqualTo(alone.rainMm(day));
        assertThat(among.on(day)).isEqualTo(alone.on(day));
      }
    }
  }
}
