/**
 * What a tank needs besides its products: adjuvants and spray volume; and how it is filled: loads,
 * amounts, order, water, jar test, clean-out. Facts from the labels' terms, no verdicts.
 */
@NullMarked
package org.swathbook.tank;

import org.jspecify.annotations.NullMarked;
