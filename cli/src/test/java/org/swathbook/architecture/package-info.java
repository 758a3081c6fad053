/**
 * Tests of the house rules that a compiler does not know: who may use whom, and where the clock,
 * the file system and the libraries may be touched. They stand in the last module because only from
 * here all the others can be seen.
 */
@NullMarked
package org.swathbook.architecture;

import org.jspecify.annotations.NullMarked;
