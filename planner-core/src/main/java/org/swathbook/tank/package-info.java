/**
 * What a tank needs besides its products: adjuvants and spray volume. Facts from the labels' terms,
 * no verdicts.
 */
@NullMarked
package org.swathbook.tank;

import org.jspecify.annotations.NullMarked;
