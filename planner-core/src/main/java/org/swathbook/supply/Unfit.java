package org.swathbook.supply;

import java.time.LocalDate;
import org.swathbook.book.HeldStock;
import org.swathbook.program.FieldId;

/**
 * Stock that would have served a pass, had it still been good.
 *
 * @param field and {@code date}: the first pass that it is too old for
 */
public record Unfit(HeldStock stock, FieldId field, LocalDate date) {}
