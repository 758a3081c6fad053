/**
 * Quantities with units: parse, convert, compare, print. The only conversion factors of the project
 * live here. US customary factors are the exact ones of NIST Handbook 44, Appendix C (1 in = 2.54
 * cm, 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L, 1 acre = 4046.8564224 m² on the international
 * foot).
 */
@NullMarked
package org.swathbook.measure;

import org.jspecify.annotations.NullMarked;
