package org.swathbook.rules;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Collects what rules find. Words are made only when they are wanted: a collector that asks only
 * whether something blocks makes none.
 */
public final class Findings {

  /**
   * Severity, pass (what concerns the whole program last), rule, active, weed, product, neighbor,
   * words.
   */
  public static final Comparator<Finding> ORDER = FindingOrder::ofFindings;

  /** Active or nothing, then the rule that asks, then the words. */
  public static final Comparator<Ask> ORDER_OF_ASKS = FindingOrder::ofAsks;

  /** How much of a finding is kept. */
  private enum Kept {
    WORDS,
    OBJECTIONS,
    REFUSALS,
    PLACES,
    COUNTS
  }

  private static final Text NO_WORDS = Text.of("", "");

  private final Kept kept;
  private final Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
  private final Set<Finding> findings = new LinkedHashSet<>();
  private final Set<Ask> asks = new LinkedHashSet<>();

  private Findings(Kept kept) {
    this.kept = kept;
  }

  /** Collects everything with its words. */
  public static Findings all() {
    return new Findings(Kept.WORDS);
  }

  /**
   * Which rule objects how hard and where, without its words: enough to compare tanks of which one
   * is then judged again. Asks have theirs.
   */
  public static Findings places() {
    return new Findings(Kept.PLACES);
  }

  /** Blocks and warnings with their words; notes and asks are only counted. */
  public static Findings objections() {
    return new Findings(Kept.OBJECTIONS);
  }

  /** Blocks and asks with their words; warnings and notes are only counted. */
  public static Findings refusals() {
    return new Findings(Kept.REFUSALS);
  }

  /** Only counts, by severity. */
  public static Findings counting() {
    return new Findings(Kept.COUNTS);
  }

  /** An empty one that keeps as much. */
  public Findings fresh() {
    return new Findings(kept);
  }

  public void add(Rule rule, Severity severity, About about, Supplier<Text> text) {
    counts.merge(severity, 1, Integer::sum);
    if (keeps(severity)) {
      Text t = kept == Kept.PLACES ? NO_WORDS : text.get();
      findings.add(
          new Finding(
              rule.id(),
              severity,
              t.message(),
              t.limit(),
              t.actual(),
              t.source(),
              t.remedy(),
              about));
    }
  }

  private boolean keeps(Severity severity) {
    return switch (kept) {
      case WORDS, PLACES -> true;
      case OBJECTIONS -> severity == Severity.BLOCK || severity == Severity.WARN;
      case REFUSALS -> severity == Severity.BLOCK || severity == Severity.ASK;
      case COUNTS -> false;
    };
  }

  public void block(Rule rule, About about, Supplier<Text> text) {
    add(rule, Severity.BLOCK, about, text);
  }

  public void warn(Rule rule, About about, Supplier<Text> text) {
    add(rule, Severity.WARN, about, text);
  }

  public void note(Rule rule, About about, Supplier<Text> text) {
    add(rule, Severity.NOTE, about, text);
  }

  /** Something that matters here and is not known, whichever pass made it matter. */
  public void ask(Rule rule, About about, Supplier<Lookup> lookup) {
    counts.merge(Severity.ASK, 1, Integer::sum);
    if (keeps(Severity.ASK)) {
      Lookup l = lookup.get();
      asks.add(new Ask(rule.id(), l.what(), l.where(), about.withoutPass()));
    }
  }

  public void addAll(Findings other) {
    other.counts.forEach((severity, n) -> counts.merge(severity, n, Integer::sum));
    findings.addAll(other.findings);
    asks.addAll(other.asks);
  }

  /** The same of one pass alone, which needs no number. */
  public Findings withoutPass() {
    Findings out = fresh();
    out.counts.putAll(counts);
    for (Finding f : findings) {
      out.findings.add(f.withoutPass());
    }
    out.asks.addAll(asks);
    return out;
  }

  /** The same as said of a pass, counted from 0. */
  public Findings ofPass(int index) {
    Findings out = fresh();
    out.counts.putAll(counts);
    for (Finding f : findings) {
      out.findings.add(f.withPass(index));
    }
    out.asks.addAll(asks);
    return out;
  }

  /** The same less some findings, each now counted once; all asks stay. */
  public Findings without(Predicate<Finding> gone) {
    Findings out = fresh();
    for (Finding f : findings) {
      if (!gone.test(f)) {
        out.findings.add(f);
        out.counts.merge(f.severity(), 1, Integer::sum);
      }
    }
    out.asks.addAll(asks);
    out.counts.put(Severity.ASK, asks.size());
    return out;
  }

  public boolean isBlocked() {
    return count(Severity.BLOCK) > 0;
  }

  /** How often something of a severity was said, repetitions among it. */
  public int count(Severity severity) {
    return counts.getOrDefault(severity, 0);
  }

  /** All findings in no stated order, each once. */
  public Stream<Finding> stream() {
    return findings.stream();
  }

  /** All findings in their stated order, each once. */
  public List<Finding> sorted() {
    return findings.stream().sorted(ORDER).toList();
  }

  /** All asks in their stated order, each once. */
  public List<Ask> sortedAsks() {
    return sortedAsks(asks);
  }

  static List<Ask> sortedAsks(Collection<Ask> asks) {
    return asks.stream().distinct().sorted(ORDER_OF_ASKS).toList();
  }
}
