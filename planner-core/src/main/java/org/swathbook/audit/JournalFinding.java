package org.swathbook.audit;

import java.time.LocalDate;
import org.swathbook.book.Field;
import org.swathbook.rules.Finding;

/**
 * What a rule says of a pass that was made.
 *
 * @param field as it was in that season
 * @param application id of the pass in the journal
 */
public record JournalFinding(
    Field field, int season, String application, LocalDate date, Finding finding) {}
