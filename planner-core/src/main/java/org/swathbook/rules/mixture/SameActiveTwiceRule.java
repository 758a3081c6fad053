package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** One parent acid or active that comes into the tank in two doses. */
public final class SameActiveTwiceRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("same-active-twice"),
          Severity.WARN,
          "Do two products of the tank hold the same active?",
          "Two doses of one tank bring the same acid or parent active; salts and esters of one acid,"
              + " and racemic and S- forms, are one. A note for a top-up: two products that hold"
              + " this active alone. Limits on rates and seasons add them up by themselves.",
          List.of(Say.COMMON_PRACTICE),
          "a premix with S-metolachlor beside S-metolachlor",
          "potassium glyphosate topped up with isopropylamine glyphosate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    Map<String, List<ActiveUse>> byParent = new LinkedHashMap<>();
    for (ActiveUse a : facts.actives()) {
      byParent.computeIfAbsent(a.ingredient().capGroup(), g -> new ArrayList<>()).add(a);
    }
    for (Map.Entry<String, List<ActiveUse>> e : byParent.entrySet()) {
      List<ActiveUse> same = e.getValue();
      if (same.size() > 1) {
        out.add(
            this,
            isTopUp(same) ? Severity.NOTE : Severity.WARN,
            facts.about().withIngredient(same.get(0).ingredient().id()),
            () -> text(e.getKey(), same));
      }
    }
  }

  /** Different products of nothing but one active. */
  private static boolean isTopUp(List<ActiveUse> same) {
    return same.stream().allMatch(a -> a.dose().product().isSingle())
        && same.stream().map(a -> a.ingredient().id()).distinct().count() == 1
        && same.stream().map(a -> a.dose().product().id()).distinct().count() == same.size();
  }

  private static Text text(String parent, List<ActiveUse> same) {
    double sum = same.stream().mapToDouble(a -> a.active().lbPerAcre()).sum();
    String together = Say.lb(sum, same.get(0).ingredient().rateBasis());
    List<String> each =
        same.stream()
            .map(
                a ->
                    Say.lb(a.active().lbPerAcre(), a.ingredient().rateBasis())
                        + " in "
                        + a.dose().product().name())
            .toList();
    return Text.of(
            Say.start(parent)
                + " comes "
                + (same.size() == 2 ? "twice" : same.size() + " times")
                + " into one tank: "
                + Say.list(each)
                + ", together "
                + together
                + ".",
            Say.COMMON_PRACTICE)
        .compared(same.size() + " products", "1 product")
        .cleared("drop one of them and set the other to what is wanted");
  }
}
