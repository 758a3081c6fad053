/**
 * What a label or an agronomist objects to: findings by scope, each with its limit, the value met
 * and the source.
 */
@NullMarked
package org.swathbook.rules;

import org.jspecify.annotations.NullMarked;
