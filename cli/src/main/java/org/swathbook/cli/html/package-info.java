/** Pages for a printer or a browser: self-contained, no script, nothing fetched. */
@NullMarked
package org.swathbook.cli.html;

import org.jspecify.annotations.NullMarked;
