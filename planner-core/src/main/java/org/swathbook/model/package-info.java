/**
 * What the reference prints of a model: a card says what it is, its equation, its constants as the
 * code holds them, and where they are from. A model's own class makes its cards.
 */
@NullMarked
package org.swathbook.model;

import org.jspecify.annotations.NullMarked;
