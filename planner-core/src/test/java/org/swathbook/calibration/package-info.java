/** Tests of calibration. */
@NullMarked
package org.swathbook.calibration;

import org.jspecify.annotations.NullMarked;
