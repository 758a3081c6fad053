package org.swathbook.source;

/** A value of a YAML file with its place. Nothing is typed yet: {@code yes} and 5 are both text. */
public sealed interface Node permits ScalarNode, ListNode, MapNode {

  Mark mark();

  /** The kind in words, for messages: {@code a single value}, {@code a list}, {@code a map}. */
  String kind();
}
