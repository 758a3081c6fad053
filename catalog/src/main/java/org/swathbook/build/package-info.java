/**
 * What the build does to the classes that the compiler made, before they become a jar. Nothing here
 * runs with the program, and nothing of the program depends on it.
 */
@NullMarked
package org.swathbook.build;

import org.jspecify.annotations.NullMarked;
