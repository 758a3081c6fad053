package org.swathbook.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.Judgement;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;

/**
 * What a judgement objects to that another did not. Passes may differ in number and order, so what
 * is new is counted: a rule that objects to more passes than before breaks anew.
 *
 * @param houseRules broken ones, with all passes and weeds of those that are new
 * @param findings blocks and warnings
 */
public record Breaks(List<BrokenHouseRule> houseRules, List<Finding> findings) {

  private record HouseKey(String name, Optional<WeedId> weed) {
    static HouseKey of(BrokenHouseRule b) {
      return new HouseKey(b.name(), b.weed());
    }
  }

  private record FindingKey(
      RuleId rule, Severity severity, Optional<IngredientId> ingredient, Optional<WeedId> weed) {
    static FindingKey of(Finding f) {
      return new FindingKey(f.rule(), f.severity(), f.about().ingredient(), f.about().weed());
    }
  }

  public Breaks {
    houseRules = List.copyOf(houseRules);
    findings = List.copyOf(findings);
  }

  /** Names of the house rules, then ids of the rules, each once, blocks before warnings. */
  public List<String> names() {
    return Stream.concat(
            houseRules.stream().map(BrokenHouseRule::name),
            findings.stream().map(f -> f.rule().value()))
        .distinct()
        .toList();
  }

  static Breaks between(Judgement before, Judgement after) {
    List<HouseKey> brokenBefore = before.brokenHouseRules().stream().map(HouseKey::of).toList();
    List<HouseKey> brokenAfter = after.brokenHouseRules().stream().map(HouseKey::of).toList();
    List<BrokenHouseRule> house = new ArrayList<>();
    for (BrokenHouseRule b : after.brokenHouseRules()) {
      if (isMore(HouseKey.of(b), brokenBefore, brokenAfter)) {
        house.add(b);
      }
    }
    List<FindingKey> foundBefore = objections(before).map(FindingKey::of).toList();
    List<FindingKey> foundAfter = objections(after).map(FindingKey::of).toList();
    return new Breaks(
        house,
        objections(after).filter(f -> isMore(FindingKey.of(f), foundBefore, foundAfter)).toList());
  }

  private static <K> boolean isMore(K key, List<K> before, List<K> after) {
    return count(key, after) > count(key, before);
  }

  private static <K> long count(K key, List<K> all) {
    return all.stream().filter(key::equals).count();
  }

  private static Stream<Finding> objections(Judgement judged) {
    return judged.findings().stream()
        .filter(f -> f.severity() == Severity.BLOCK || f.severity() == Severity.WARN);
  }
}
