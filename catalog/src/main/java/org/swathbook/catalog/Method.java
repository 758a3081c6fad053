package org.swathbook.catalog;

/** How a spray is brought to the weeds. */
public enum Method {
  BROADCAST("broadcast"),
  DROP_NOZZLE("drop-nozzle"),
  DIRECTED("directed"),
  HOODED("hooded"),
  SPOT("spot");

  private final String spelling;

  Method(String spelling) {
    this.spelling = spelling;
  }

  public String spelling() {
    return spelling;
  }
}
