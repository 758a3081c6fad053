/**
 * How the demo book's invented weather was made, and the check that the committed files are what
 * this code writes. Nothing here is a model the planner uses.
 */
@NullMarked
package org.swathbook.demo;

import org.jspecify.annotations.NullMarked;
