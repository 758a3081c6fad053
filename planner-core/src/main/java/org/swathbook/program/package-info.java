/**
 * What is sprayed: doses of products, the mix in a tank, passes on dates, a program for a field.
 */
@NullMarked
package org.swathbook.program;

import org.jspecify.annotations.NullMarked;
