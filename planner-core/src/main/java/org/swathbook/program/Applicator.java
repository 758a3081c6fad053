package org.swathbook.program;

/**
 * Who is to spray.
 *
 * @param certNo number of the certificate; empty where none is named
 */
public record Applicator(String name, String certNo) {}
