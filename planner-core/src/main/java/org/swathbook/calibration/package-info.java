/** Setting a sprayer to its spray volume: nozzle flow, speed, pressure and what is caught. */
@NullMarked
package org.swathbook.calibration;

import org.jspecify.annotations.NullMarked;
