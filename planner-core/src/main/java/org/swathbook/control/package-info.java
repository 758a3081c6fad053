/**
 * What a dose does to weeds: residual layers, foliar response to dose and size, joint action of a
 * mix, biotypes.
 */
@NullMarked
package org.swathbook.control;

import org.jspecify.annotations.NullMarked;
