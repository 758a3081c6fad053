/**
 * One program walked through every weather year by a kernel that carries what is alive, and bounds
 * of what passes may still bring. Models of cost are in {@code loss}, results in {@code outcome}.
 */
@NullMarked
package org.swathbook.season;

import org.jspecify.annotations.NullMarked;
