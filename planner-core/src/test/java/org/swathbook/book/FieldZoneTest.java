package org.swathbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.testing.FieldBuilder;

class FieldZoneTest {
  private static FieldBuilder field(String state) {
    return FieldBuilder.of("Z-1", "corn", "2027-05-01").state(state);
  }

  /**
   * Seats of counties and the zone that 49 CFR part 71 puts them in; places and zones from memory.
   * A dash: not known, which is allowed near the limit alone.
   */
  @ParameterizedTest
  @CsvSource({
    "IA, 42.03, -93.63, America/Chicago", // Ames
    "IL, 40.12, -88.24, America/Chicago", // Urbana
    "CO, 40.42, -104.71, America/Denver", // Greeley
    "AZ, 32.65, -114.62, America/Phoenix", // Yuma
    "AZ, 35.67, -109.05, -", // Window Rock
    "IN, 40.42, -86.88, America/New_York", // Lafayette
    "IN, 39.47, -87.41, America/New_York", // Terre Haute
    "IN, 41.08, -85.14, America/New_York", // Fort Wayne
    "IN, 41.48, -87.06, -", // Valparaiso, Chicago's clock
    "IN, 37.95, -86.76, -", // Tell City, Chicago's clock
    "MI, 42.73, -84.56, America/New_York", // Lansing
    "MI, 46.54, -87.40, -", // Marquette, near the limit
    "MI, 45.82, -88.07, -", // Iron Mountain, Chicago's clock
    "ND, 46.88, -96.79, America/Chicago", // Fargo
    "ND, 48.23, -101.30, America/Chicago", // Minot
    "ND, 48.55, -102.87, America/Chicago", // near Powers Lake
    "ND, 48.15, -103.62, -", // Williston, Chicago's clock
    "ND, 46.88, -102.79, America/Denver", // Dickinson
    "ND, 46.81, -100.78, -", // Bismarck, near the limit
    "SD, 43.55, -96.73, America/Chicago", // Sioux Falls
    "SD, 44.08, -103.23, America/Denver", // Rapid City
    "SD, 43.30, -100.66, -", // Mission
    "NE, 40.81, -96.70, America/Chicago", // Lincoln
    "NE, 41.87, -103.66, America/Denver", // Scottsbluff
    "NE, 41.13, -100.77, -", // North Platte, near the limit
    "KS, 37.97, -100.87, America/Chicago", // Garden City
    "KS, 39.35, -101.71, -", // Goodland, Denver's clock
    "TX, 33.58, -101.86, America/Chicago", // Lubbock
    "TX, 31.76, -106.49, America/Denver", // El Paso
    "KY, 37.77, -87.11, America/Chicago", // Owensboro
    "KY, 38.04, -84.50, America/New_York", // Lexington
    "KY, 37.05, -85.06, -", // Jamestown, Chicago's clock
    "TN, 35.15, -90.05, America/Chicago", // Memphis
    "TN, 35.96, -83.92, America/New_York", // Knoxville
    "FL, 30.42, -87.22, America/Chicago", // Pensacola
    "FL, 27.34, -81.34, America/New_York", // Lake Placid
    "ID, 46.73, -117.00, America/Los_Angeles", // Moscow
    "ID, 42.56, -114.46, America/Boise", // Twin Falls
    "ID, 45.42, -116.32, -", // Riggins
    "OR, 44.94, -123.04, America/Los_Angeles", // Salem
    "OR, 43.98, -117.24, -" // Vale, Boise's clock
  })
  void placesAndTheirClocks(String state, double latitude, double longitude, String zone) {
    assertThat(FieldZone.of(field(state).place(latitude, longitude).build()))
        .isEqualTo(zone.equals("-") ? Optional.empty() : Optional.of(ZoneId.of(zone)));
  }

  @Test
  void aPartedStateNeedsThePlace() {
    assertThat(FieldZone.of(field("NE").build())).isEmpty();
    assertThat(FieldZone.of(field("IA").latitudeUnknown().build()))
        .contains(ZoneId.of("America/Chicago"));
    assertThat(FieldZone.of(field("NE").stateUnknown().place(40.7, -98.6).build())).isEmpty();
  }

  /** Every state that a book may name has a clock somewhere. */
  @Test
  void noStateIsForgotten() {
    List<String> states =
        List.of(
            ("AL AK AZ AR CA CO CT DE DC FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV"
                    + " NH NJ NM NY NC ND OH OK OR PA PR RI SC SD TN TX UT VT VA WA WV WI WY")
                .split(" "));

    assertThat(states)
        .allSatisfy(
            s -> assertThat(FieldZone.of(field(s).place(33, -80).build())).as(s).isPresent());
  }
}
