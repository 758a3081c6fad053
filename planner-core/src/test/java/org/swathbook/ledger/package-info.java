/** Tests of the ledger. */
@NullMarked
package org.swathbook.ledger;

import org.jspecify.annotations.NullMarked;
