package org.swathbook.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.review.Change;
import org.swathbook.catalog.review.Diff;
import org.swathbook.cli.json.DiffJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.DiffText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says in words what differs between two catalogs. */
@Command(
    addMethodSubcommands = false,
    name = "diff",
    description = {
      "Says in words what changed from one catalog to another.",
      "Named are books or catalog folders, which lie over the starter; 'starter' is the starter"
          + " alone. With one name, what it changes of the starter.",
      "For example: catalog diff last-year/catalog our-book/catalog"
    })
final class CatalogDiffCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(index = "0", paramLabel = "A", description = "The catalog before.")
  @Nullable String one;

  @Parameters(index = "1", arity = "0..1", paramLabel = "B", description = "The catalog after.")
  @Nullable String other;

  @Mixin OutputOption output = new OutputOption();

  @Override
  public Integer call() {
    String before = other == null ? NamedCatalog.STARTER : String.valueOf(one);
    String after = other == null ? String.valueOf(one) : other;
    List<Change> changes =
        Diff.changes(
            CatalogOption.load(NamedCatalog.of(before, spec)),
            CatalogOption.load(NamedCatalog.of(after, spec)));
    output.print(
        output.json ? DiffJson.of(before, after, changes) : DiffText.of(before, after, changes));
    return ExitCode.DONE;
  }
}
