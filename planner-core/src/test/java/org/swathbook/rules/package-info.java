/**
 * The rules one by one: each with a case for every example on its card, and what must hold of all
 * of them.
 */
@NullMarked
package org.swathbook.rules;

import org.jspecify.annotations.NullMarked;
