/**
 * Results as JSON for scripts: keys in a documented order, units in their names, numbers rounded to
 * fixed decimals. Rendering, nothing else.
 */
@NullMarked
package org.swathbook.cli.json;

import org.jspecify.annotations.NullMarked;
