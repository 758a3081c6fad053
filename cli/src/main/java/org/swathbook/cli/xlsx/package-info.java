/** Tables as a workbook of a spreadsheet. Rendering, nothing else. */
@NullMarked
package org.swathbook.cli.xlsx;

import org.jspecify.annotations.NullMarked;
