package org.swathbook.audit;

import org.swathbook.program.FieldId;

/**
 * How many effective sites a weed met on a field in the last season of the journal that has it.
 *
 * @param acres of the field
 */
record LastSites(FieldId field, double acres, int season, int effective) {}
