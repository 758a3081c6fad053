package org.swathbook.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.swathbook.catalog.review.Change;
import org.swathbook.catalog.review.Diff;
import org.swathbook.cli.json.DiffJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.DiffText;
import picocli.CommandLine.Model.CommandSpec;

/** Says in words what differs between two catalogs. */
final class CatalogDiffCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> one;
  private final Value<String> other;
  private final OutputOption output;

  CatalogDiffCommand() {
    spec.name("diff")
        .usageMessage()
        .description(
            "Says in words what changed from one catalog to another.",
            "Named are books or catalog folders, which lie over the starter; 'starter' is the"
                + " starter alone. With one name, what it changes of the starter.",
            "For example: catalog diff last-year/catalog our-book/catalog");
    one = Value.requiredPositional(spec, "A", String.class, "The catalog before.");
    other = Value.positional(spec, "B", String.class, "The catalog after.");
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    String before = other.isGiven() ? one.required() : NamedCatalog.STARTER;
    String after = other.or(one.required());
    List<Change> changes =
        Diff.changes(
            CatalogOption.load(NamedCatalog.of(before, spec)),
            CatalogOption.load(NamedCatalog.of(after, spec)));
    output.print(
        output.json() ? DiffJson.of(before, after, changes) : DiffText.of(before, after, changes));
    return ExitCode.DONE;
  }
}
