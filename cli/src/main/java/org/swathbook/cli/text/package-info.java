/** Reports as plain text of at most 100 columns. Rendering, nothing else. */
@NullMarked
package org.swathbook.cli.text;

import org.jspecify.annotations.NullMarked;
