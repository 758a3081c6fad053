/**
 * Reading of YAML and CSV into plain nodes and rows that remember where they stood (file, line,
 * column), the collecting of problems with those places, and writing a file so that a reader sees
 * the old bytes or the new, never a half. What the texts mean is the business of the packages that
 * call this one; here everything stays text until somebody asks for a number.
 */
@NullMarked
package org.swathbook.source;

import org.jspecify.annotations.NullMarked;
