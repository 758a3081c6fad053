package org.swathbook.demo;

import java.util.List;

/** The two invented stations of the demo book, about 110 km apart. */
enum DemoStation {
  /** Placed near 40.7 N 98.6 W: about 640 mm of rain a year. */
  SEDGE_FORK("sedge-fork", 20_160_901L),
  /** Placed near 40.2 N 99.7 W: about 500 mm a year, warmer days, cooler nights. */
  DRY_BUTTE("dry-butte", 20_160_902L);

  private final String id;
  private final long seed;

  DemoStation(String id, long seed) {
    this.id = id;
    this.seed = seed;
  }

  String id() {
    return id;
  }

  long seed() {
    return seed;
  }

  MonthlyNormals normals() {
    return switch (this) {
      case SEDGE_FORK ->
          new MonthlyNormals(
              List.of(2.5, 5.0, 11.5, 17.4, 22.8, 29.2, 31.4, 30.2, 25.8, 18.6, 10.2, 3.4),
              List.of(-9.8, -7.9, -2.6, 4.0, 10.2, 16.2, 18.8, 17.6, 11.9, 4.8, -2.8, -8.2),
              List.of(11.0, 16.0, 35.0, 66.0, 110.0, 100.0, 90.0, 82.0, 54.0, 48.0, 22.0, 16.0),
              List.of(4.5, 5.0, 7.0, 9.0, 12.0, 10.5, 9.5, 8.5, 7.0, 6.5, 5.0, 5.0),
              List.of(5.8, 5.8, 5.4, 4.6, 3.9, 3.3, 2.7, 2.8, 3.8, 4.4, 5.0, 5.6));
      case DRY_BUTTE ->
          new MonthlyNormals(
              List.of(3.6, 6.0, 12.4, 18.2, 23.6, 30.1, 32.6, 31.2, 26.7, 19.6, 11.2, 4.4),
              List.of(-10.5, -8.7, -3.5, 3.1, 9.4, 15.3, 18.1, 16.9, 11.0, 3.8, -3.8, -9.1),
              List.of(9.0, 12.0, 27.0, 52.0, 85.0, 79.0, 73.0, 64.0, 40.0, 35.0, 16.0, 11.0),
              List.of(3.8, 4.2, 5.8, 7.8, 10.5, 9.2, 8.6, 7.8, 6.0, 5.4, 4.2, 4.0),
              List.of(5.9, 5.9, 5.5, 4.7, 4.0, 3.4, 2.8, 2.9, 3.9, 4.5, 5.1, 5.7));
    };
  }
}
