/**
 * For those who keep a catalog: what contradicts itself or has gone stale, what changed between two
 * catalogs, where an entry is used, and how much of it rests on published sources.
 */
@NullMarked
package org.swathbook.catalog.review;

import org.jspecify.annotations.NullMarked;
