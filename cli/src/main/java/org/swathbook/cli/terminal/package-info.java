/** What passes between the program and a terminal: questions, progress, colour, exit codes. */
@NullMarked
package org.swathbook.cli.terminal;

import org.jspecify.annotations.NullMarked;
