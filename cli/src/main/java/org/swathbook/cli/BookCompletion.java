package org.swathbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Shell code that completes what a book names: its fields, programs, mixes and observations. The
 * shell looks them up itself, in the folder of {@code --book} or the current one, so that nobody
 * waits for Java; what it finds is quoted and never run.
 */
final class BookCompletion {
  /** What the label of an argument stands for, and where a book keeps it. */
  private static final Map<String, String> KEPT =
      Map.of(
          "FIELD", "fields",
          "PROGRAM", "programs",
          "MIX", "mixes",
          "OBSERVATION", "observations");

  private static final String LOOK_UP =
      """

      # Names that a book holds, one a line: ids of fields.csv, or files of a folder.
      function _swathbook_names() {
        local book=$1 kind=$2 file
        if [[ $kind == fields ]]; then
          [[ -r $book/fields.csv ]] && awk -F, '
            { sub(/\\r$/, "") }
            !at { for (i = 1; i <= NF; i++) if ($i == "id") at = i; next }
            $at != "" { print $at }' "$book/fields.csv"
        else
          for file in "$book/$kind"/*.yaml; do
            [[ -e $file ]] || continue
            file=${file##*/}
            printf '%s\\n' "${file%.yaml}"
          done
        fi
      }

      # The folder of --book, wherever it stands in the line, else the current one. The shell gives
      # words as they were typed, with quotes and backslashes, which are taken off and never run.
      function _swathbook_book() {
        local i=1 book
        while (( i < ${#COMP_WORDS[@]} - 1 )); do
          if [[ ${COMP_WORDS[i]} == --book ]]; then
            [[ ${COMP_WORDS[i+1]} == = ]] && (( i++ ))
            book=${COMP_WORDS[i+1]/#\\~/$HOME}
            book=${book#[\\'\\"]}
            book=${book%[\\'\\"]}
            printf '%s' "${book//\\\\/}"
            return
          fi
          (( i++ ))
        done
        printf '.'
      }

      function _complete_swathbook_book() {
        local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} kind='' name
        _complete_swathbook
        [[ $word == -* || $COMP_CWORD -lt 2 ]] && return
        case "${COMP_WORDS[1]} $before" in
      CASES
        esac
        [[ -n $kind ]] || return
        while IFS= read -r name; do
          [[ $name == "$word"* ]] && COMPREPLY+=("$(printf '%q' "$name")")
        done < <(_swathbook_names "$(_swathbook_book)" "$kind")
      }

      complete -F _complete_swathbook_book -o default swathbook swathbook.sh swathbook.bash
      """;

  private BookCompletion() {}

  /** To be read by the shell after the script that picocli makes. */
  static String of(CommandSpec root) {
    StringBuilder cases = new StringBuilder();
    new TreeMap<>(root.subcommands()).forEach((name, command) -> command(name, command, cases));
    return LOOK_UP.replace("CASES", cases.toString().stripTrailing());
  }

  /** First what follows an option, then what stands by itself. */
  private static void command(String name, CommandLine command, StringBuilder cases) {
    Map<String, List<String>> byKind = new TreeMap<>();
    for (OptionSpec option : command.getCommandSpec().options()) {
      if (option.arity().max() > 0) {
        List<String> before =
            byKind.computeIfAbsent(kept(option).orElse(""), k -> new ArrayList<>());
        for (String n : option.names()) {
          before.add("'" + name + " " + n + "'");
        }
      }
    }
    Optional<String> alone =
        command.getCommandSpec().positionalParameters().stream()
            .flatMap(p -> kept(p).stream())
            .findFirst();
    if (alone.isEmpty() && byKind.keySet().stream().allMatch(String::isEmpty)) {
      return;
    }
    byKind.forEach((kind, before) -> line(String.join("|", before), kind, cases));
    alone.ifPresent(kind -> line("'" + name + " '*", kind, cases));
  }

  private static void line(String before, String kind, StringBuilder cases) {
    cases.append("    ").append(before).append(") kind='").append(kind).append("' ;;\n");
  }

  private static Optional<String> kept(ArgSpec arg) {
    return Optional.ofNullable(KEPT.get(arg.paramLabel().replaceAll("\\W", "")));
  }
}
