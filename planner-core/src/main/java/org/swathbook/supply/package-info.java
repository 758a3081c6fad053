/**
 * What is to be bought for planned passes: amounts that are needed, what is on hand, packages and
 * what they cost. No verdicts.
 */
@NullMarked
package org.swathbook.supply;

import org.jspecify.annotations.NullMarked;
