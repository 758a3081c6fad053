/**
 * What commands have done between their options and the core: the job or program meant is found in
 * the book, walked, judged or planned, and kept.
 */
@NullMarked
package org.swathbook.cli.work;

import org.jspecify.annotations.NullMarked;
