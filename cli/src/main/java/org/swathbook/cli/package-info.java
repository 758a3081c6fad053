/**
 * The command line: one command a file. The only place that knows the clock, the environment, the
 * terminal and exit codes; everything below is handed what it needs.
 */
@NullMarked
package org.swathbook.cli;

import org.jspecify.annotations.NullMarked;
