/**
 * What is known of active ingredients, products, weeds, crops and how they meet: immutable records
 * without any reading of files. Every value that a label or a paper states carries its {@link
 * org.swathbook.catalog.Source}; what nobody stated is {@link
 * org.swathbook.catalog.Stated.Unknown}, never a default in silence.
 */
@NullMarked
package org.swathbook.catalog;

import org.jspecify.annotations.NullMarked;
