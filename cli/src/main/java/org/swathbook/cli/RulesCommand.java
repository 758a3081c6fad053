package org.swathbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.swathbook.catalog.Slug;
import org.swathbook.cli.json.RulesJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.RulesText;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.RulePage;
import org.swathbook.source.Nearest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Shows the rule book. */
final class RulesCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> id;
  private final OutputOption output;

  RulesCommand() {
    spec.name("rules")
        .usageMessage()
        .description(
            "Lists the rules that programs are judged by, or shows one in full.",
            "For example: rules annual-cap");
    id =
        Value.positional(
            spec, "ID", String.class, "A rule, annual-cap for example; all of them when left out.");
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    List<RulePage> rules = RuleBook.pages();
    if (id.value() == null) {
      output.print(output.json() ? RulesJson.of(rules) : RulesText.list(rules));
      return ExitCode.DONE;
    }
    String slug = Slug.of(id.value());
    Optional<RulePage> one = rules.stream().filter(r -> r.id().value().equals(slug)).findFirst();
    if (one.isEmpty()) {
      throw unknown(id.value(), rules);
    }
    output.print(output.json() ? RulesJson.of(List.of(one.get())) : RulesText.one(one.get()));
    return ExitCode.DONE;
  }

  private ParameterException unknown(String typed, List<RulePage> rules) {
    List<String> known = rules.stream().map(r -> r.id().value()).toList();
    List<String> holding = known.stream().filter(k -> k.contains(Slug.of(typed))).toList();
    String instead =
        switch (holding.size()) {
          case 0 ->
              Nearest.of(typed, known).isPresent()
                  ? Complaints.nearest(typed, known)
                  : "; 'swathbook rules' lists them all";
          case 1 -> "; the nearest is " + holding.get(0);
          default -> "; there are " + String.join(", ", holding);
        };
    return new ParameterException(spec.commandLine(), "there is no rule '" + typed + "'" + instead);
  }
}
