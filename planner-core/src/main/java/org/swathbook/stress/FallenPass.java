package org.swathbook.stress;

import java.time.LocalDate;

/**
 * A pass that falls out of its label windows in more years than before.
 *
 * @param pass its place in the plain program by date, from 0
 * @param planned its date under the stress
 * @param missed years without it, {@code before} in the plain walk
 */
public record FallenPass(int pass, LocalDate planned, int missed, int before) {}
