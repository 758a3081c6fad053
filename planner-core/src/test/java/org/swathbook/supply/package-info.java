@NullMarked
package org.swathbook.supply;

import org.jspecify.annotations.NullMarked;
