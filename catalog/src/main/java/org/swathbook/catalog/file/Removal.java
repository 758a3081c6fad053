package org.swathbook.catalog.file;

import java.util.SortedMap;

/** Stages by which weeds must be gone, by row spacing in cm; empty when not stated. */
record Removal(SortedMap<Double, String> bare, SortedMap<Double, String> afterResidual) {}
