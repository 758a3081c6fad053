/** When a label allows it: stage, height, days before planting, harvest and the next crop. */
@NullMarked
package org.swathbook.rules.timing;

import org.jspecify.annotations.NullMarked;
