package org.swathbook.measure;

/**
 * What the weight of a rate counts: active ingredient, acid equivalent, the cation, or the product
 * as sold.
 */
public enum Basis {
  AI("ai"),
  AE("ae"),
  CATION("cation"),
  PRODUCT("");

  private final String symbol;

  Basis(String symbol) {
    this.symbol = symbol;
  }

  public String symbol() {
    return symbol;
  }
}
