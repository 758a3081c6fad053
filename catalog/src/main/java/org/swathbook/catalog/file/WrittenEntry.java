package org.swathbook.catalog.file;

import java.util.List;
import org.swathbook.source.MapNode;
import org.swathbook.source.Mark;

/**
 * An entry as it is written: everything that its file says, in the file's order, with the source of
 * each value. The records of the catalog hold what the program computes with; this holds what a
 * keeper wants to see.
 *
 * @param id the entry's id, which is the name of its file
 * @param starter whether it comes with the program
 * @param groups its values, by the part of the entry they stand in
 */
public record WrittenEntry(
    EntryKind kind,
    String id,
    boolean starter,
    Mark mark,
    MapNode keys,
    List<WrittenGroup> groups) {

  public WrittenEntry {
    groups = List.copyOf(groups);
  }

  /** A key's text at the top of the file; empty when it has none. */
  public String text(String key) {
    return keys.find(key).map(NodeText::plain).orElse("");
  }
}
