/** Laws of units, quantities and rates, and published conversion values. */
@NullMarked
package org.swathbook.measure;

import org.jspecify.annotations.NullMarked;
