/**
 * The files of the catalog: the starter that comes with the program and a folder that lies over it.
 * One reader and one writer for each kind of entry; problems of form and of meaning are collected
 * over all files, each with its place, before anything is refused, and what is written reads back
 * the same.
 */
@NullMarked
package org.swathbook.catalog.file;

import org.jspecify.annotations.NullMarked;
