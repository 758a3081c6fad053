/**
 * What a label allows at all: crop, trait, soil, rate, caps and counts; and what it does not say.
 */
@NullMarked
package org.swathbook.rules.label;

import org.jspecify.annotations.NullMarked;
