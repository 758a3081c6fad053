/**
 * What a report says whatever its form: facts drawn from results for text, JSON and HTML alike, so
 * that no form tells another story. No layout here.
 */
@NullMarked
package org.swathbook.cli.report;

import org.jspecify.annotations.NullMarked;
