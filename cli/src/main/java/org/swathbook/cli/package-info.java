/**
 * The command line: one command a file, with its options. The only place that knows the
 * environment, the streams and the end of the process; everything below is handed what it needs.
 */
@NullMarked
package org.swathbook.cli;

import org.jspecify.annotations.NullMarked;
