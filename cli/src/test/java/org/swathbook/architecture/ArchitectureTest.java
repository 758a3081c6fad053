package org.swathbook.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.TryCatchBlock;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
  private static final PackageTable TABLE = new PackageTable();

  /** Reading class files takes seconds, so it is done once for all rules. */
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages(PackageTable.ROOT);

  /** A row of the guide's table: module or none, the packages, what lives there. */
  private static final Pattern HOUSE_ROW =
      Pattern.compile("^\\| *(?:catalog|planner-core|cli)? *\\| ((?:`[a-z.]+`(?:, )?)+) \\|");

  private static final Pattern NAME = Pattern.compile("`([a-z.]+)`");

  private static final String[] EDGES = {
    "org.swathbook.source..",
    "org.swathbook.(*).file..",
    "org.swathbook.cli..",
    "org.swathbook.build.."
  };

  @Test
  void allModulesAreSeen() {
    assertThat(CLASSES.stream().map(JavaClass::getPackageName))
        .contains("org.swathbook.measure", "org.swathbook.program", "org.swathbook.cli");
  }

  @Test
  void everyPackageHasItsPlaceInTheTable() {
    assertThat(
            CLASSES.stream()
                .map(JavaClass::getPackageName)
                .distinct()
                .filter(name -> TABLE.rowOf(name).isEmpty()))
        .isEmpty();
  }

  @Test
  void everyRowOfTheTableHasAPackage() {
    Set<String> there =
        CLASSES.stream()
            .flatMap(c -> TABLE.rowOf(c.getPackageName()).stream())
            .collect(Collectors.toSet());
    assertThat(TABLE.names()).containsExactlyInAnyOrderElementsOf(there);
  }

  /** Whoever is new here looks a package up in the guide. */
  @Test
  void theGuideForContributorsSaysWhatLivesInEveryPackage() throws IOException {
    Path guide = Path.of(System.getProperty("basedir", "")).resolve("../DEVELOPERS.md");
    Set<String> told =
        Files.readAllLines(guide.toAbsolutePath(), UTF_8).stream()
            .map(HOUSE_ROW::matcher)
            .filter(Matcher::find)
            .flatMap(m -> NAME.matcher(m.group(1)).results().map(r -> r.group(1)))
            .collect(Collectors.toSet());
    assertThat(told).containsExactlyInAnyOrderElementsOf(TABLE.names());
  }

  @Test
  void packagesUseOnlyWhatTheTableAllows() {
    classes().should(keepToTheTable()).check(CLASSES);
  }

  @Test
  void rowsOfTheTableAreFreeOfCycles() {
    slices().assignedFrom(rows()).should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void familiesOfRulesDoNotKnowEachOther() {
    slices()
        .matching("org.swathbook.rules.(*)..")
        .should()
        .notDependOnEachOther()
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void onlyThePlannerSearches() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.swathbook.plan..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.swathbook.plan.draft..",
            "org.swathbook.plan.climb..",
            "org.swathbook.plan.exact..",
            "org.swathbook.plan.bound..")
        .check(CLASSES);
  }

  @Test
  void filesAreTouchedOnlyAtTheEdges() {
    noClasses()
        .that()
        .resideOutsideOfPackages(EDGES)
        .should(dependOnClassesThat(inPackages("java.io", "java.nio.file", "java.nio.channels")))
        .check(CLASSES);
  }

  @Test
  void jacksonIsUsedOnlyWhereTextIsReadOrWritten() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "org.swathbook.source..", "org.swathbook.(*).file..", "org.swathbook.cli.json..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.fasterxml..", "org.yaml..")
        .check(CLASSES);
  }

  @Test
  void workbooksAreWrittenInOnePlace() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.swathbook.cli.xlsx")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.dhatim..")
        .check(CLASSES);
  }

  @Test
  void picocliIsUsedOnlyByTheCommands() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.swathbook.cli")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("picocli..")
        .check(CLASSES);
  }

  /**
   * Commands and options are built by calls: what picocli reads from annotations it reads by
   * reflection and through proxies, which are in no class archive, and a short command would wait
   * for that longer than for anything else of its command line.
   */
  @Test
  void noCommandIsAnnotated() {
    noClasses()
        .should(
            dependOnClassesThat(
                describe(
                    "are annotations of picocli",
                    c -> c.isAnnotation() && c.getPackageName().equals("picocli"))))
        .check(CLASSES);
  }

  @Test
  void nothingReachesForTheNetwork() {
    noClasses()
        .should()
        .dependOnClassesThat(
            describe(
                "reside in java.net, other than plain addresses",
                c ->
                    c.getPackageName().startsWith("java.net")
                        && !c.getName().equals("java.net.URI")))
        .check(CLASSES);
  }

  @Test
  void onlyMainTouchesTheStreamsAndTheEndOfTheProcess() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("org.swathbook.cli.Main")
        .should(
            accessTargetWhere(
                target(
                    "are the streams or the end of the process",
                    a ->
                        on(a, "java.lang.System", "out", "err", "in", "exit")
                            || on(a, "java.lang.Runtime", "exit", "halt")
                            || isNamed(a, "printStackTrace")
                                && a.getTarget().getFullName().endsWith("()"))))
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandsReadTheClockTheEnvironmentOrChance() {
    noClasses()
        .that()
        .resideOutsideOfPackages("org.swathbook.cli", "org.swathbook.cli.work")
        .should(
            accessTargetWhere(
                target("are the clock, the environment or chance", ArchitectureTest::isAmbient)))
        .check(CLASSES);
  }

  @Test
  void textIsNeverFormattedForTheLocaleOfTheMachine() {
    noClasses()
        .should(
            accessTargetWhere(
                target(
                    "format without naming a locale",
                    a ->
                        isNamed(a, "format", "formatted", "printf")
                            && Set.of(
                                    "java.lang.String",
                                    "java.io.PrintStream",
                                    "java.io.PrintWriter")
                                .contains(a.getTargetOwner().getName())
                            && !a.getTarget().getFullName().contains("java.util.Locale"))))
        .check(CLASSES);
  }

  /**
   * What a mistake of ours throws must reach the top, where it ends as a failure of the program:
   * caught on the way, it would pass for a mistake of the user. What users do wrong is a result in
   * words, or an exception of its own.
   */
  @Test
  void noMistakeOfOursPassesForOneOfTheUser() {
    Set<String> ours =
        Set.of(
            "java.lang.IllegalArgumentException",
            "java.lang.NumberFormatException",
            "java.lang.IllegalStateException",
            "java.lang.NullPointerException",
            "java.lang.IndexOutOfBoundsException",
            "java.lang.ClassCastException",
            "java.util.NoSuchElementException");
    List<TryCatchBlock> all =
        CLASSES.stream()
            .flatMap(c -> c.getCodeUnits().stream())
            .flatMap(u -> u.getTryCatchBlocks().stream())
            .toList();
    assertThat(all).as("places where anything is caught").hasSizeGreaterThan(20);
    assertThat(all)
        .filteredOn(t -> t.getCaughtThrowables().stream().anyMatch(c -> ours.contains(c.getName())))
        .isEmpty();
  }

  @Test
  void nothingStaticChanges() {
    fields().that().areStatic().should().beFinal().check(CLASSES);
  }

  private static ArchCondition<JavaClass> keepToTheTable() {
    return new ArchCondition<>("use only what the table of packages allows") {
      @Override
      public void check(JavaClass from, ConditionEvents events) {
        for (Dependency d : from.getDirectDependenciesFromSelf()) {
          String to = d.getTargetClass().getBaseComponentType().getPackageName();
          if (to.startsWith(PackageTable.ROOT) && !TABLE.permits(from.getPackageName(), to)) {
            events.add(SimpleConditionEvent.violated(d, d.getDescription()));
          }
        }
      }
    };
  }

  private static SliceAssignment rows() {
    return new SliceAssignment() {
      @Override
      public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
        return TABLE
            .rowOf(javaClass.getPackageName())
            .map(SliceIdentifier::of)
            .orElseGet(SliceIdentifier::ignore);
      }

      @Override
      public String getDescription() {
        return "the rows of the table of packages";
      }
    };
  }

  private static boolean isAmbient(JavaAccess<?> a) {
    String owner = a.getTargetOwner().getName();
    return on(a, "java.lang.System", "currentTimeMillis", "nanoTime", "getenv", "getProperty")
        || owner.startsWith("java.time.") && isNamed(a, "now", "systemDefault")
        || owner.equals("java.time.Clock")
        || on(a, "java.util.Locale", "getDefault")
        || on(a, "java.util.TimeZone", "getDefault")
        || on(a, "java.util.Calendar", "getInstance")
        || on(a, "java.lang.Math", "random")
        || on(a, "java.util.UUID", "randomUUID")
        || owner.equals("java.util.concurrent.ThreadLocalRandom")
        || a.getTarget().getFullName().equals("java.util.Date.<init>()")
        || a.getTarget().getFullName().equals("java.util.Random.<init>()");
  }

  private static DescribedPredicate<JavaClass> inPackages(String... names) {
    return describe(
        "reside in " + String.join(", ", names), c -> Set.of(names).contains(c.getPackageName()));
  }

  private static DescribedPredicate<JavaAccess<?>> target(
      String description, Predicate<JavaAccess<?>> predicate) {
    return describe(description, predicate);
  }

  private static boolean on(JavaAccess<?> access, String owner, String... names) {
    return access.getTargetOwner().getName().equals(owner) && isNamed(access, names);
  }

  private static boolean isNamed(JavaAccess<?> access, String... names) {
    return Set.of(names).contains(access.getTarget().getName());
  }
}
