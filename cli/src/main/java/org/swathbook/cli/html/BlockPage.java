package org.swathbook.cli.html;

import java.util.List;

/** A page of blocks, one below the other. */
public record BlockPage(SheetHead head, List<Block> blocks) {
  public BlockPage {
    blocks = List.copyOf(blocks);
  }
}
