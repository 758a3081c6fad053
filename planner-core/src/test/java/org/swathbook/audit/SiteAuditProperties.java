package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.DemoBook;

/** What holds of every audit: of passes drawn at random, and of journals drawn from the demo's. */
class SiteAuditProperties {
  private static final Book DEMO = DemoBook.BOOK;
  private static final Field FIELD = DEMO.fields().get(0);
  private static final WeedPressure WEED = DEMO.weedsOf(FIELD.id()).get(0);
  private static final int[] SITES = {1, 2, 3, 4, 5, 6, 9, 10, 14, 15, 22, 27};

  private static List<SiteControl> sites(Random random) {
    List<SiteControl> out = new ArrayList<>();
    Set<Integer> numbers = new LinkedHashSet<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      numbers.add(SITES[random.nextInt(SITES.length)]);
    }
    for (int n : numbers) {
      double pct = random.nextInt(101);
      boolean struck = random.nextInt(4) == 0;
      out.add(site(n, pct, struck));
    }
    return out;
  }

  private static SiteControl site(int number, double pct, boolean struck) {
    return new SiteControl(
        Site.of(number), IngredientId.of("x"), pct, struck, !struck && pct >= 80);
  }

  private static SprayedPass pass(Random random) {
    return new SprayedPass(
        LocalDate.of(2026, 5, 1), "A", true, sites(random), sites(random), false);
  }

  private static SeasonSites season(List<SprayedPass> passes) {
    return new SeasonSites(
        FIELD, WEED, 2026, new TreeSet<>(), passes, Optional.empty(), Optional.empty(), List.of());
  }

  private static List<SprayedPass> passes(Random random) {
    List<SprayedPass> out = new ArrayList<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      out.add(pass(random));
    }
    return out;
  }

  @Property
  void oneMoreEffectiveSiteNeverLowersTheCount(@ForAll long seed) {
    Random random = new Random(seed);
    List<SprayedPass> passes = passes(random);
    SeasonSites before = season(passes);
    int number = SITES[random.nextInt(SITES.length)];
    List<SprayedPass> more = new ArrayList<>(passes);
    more.add(
        new SprayedPass(
            LocalDate.of(2026, 6, 1),
            "B",
            true,
            List.of(site(number, 80 + random.nextInt(21), false)),
            List.of(),
            false));
    SeasonSites after = season(more);
    assertThat(after.effective()).containsAll(before.effective()).contains(Site.of(number));
    assertThat(after.effective().size()).isGreaterThanOrEqualTo(before.effective().size());
    assertThat(after.leaningPct()).isLessThanOrEqualTo(before.leaningPct());
  }

  /** 1 ≤ order 2 ≤ order 1 ≤ number of sites (Hill 1973, from memory). */
  @Property
  void theHillNumbersAreInTheirOrder(@ForAll long seed) {
    SeasonSites s = season(passes(new Random(seed)));
    long killing = s.kill().size();
    if (s.effectiveNumber() > 0) {
      assertThat(s.inverseSimpson()).isGreaterThanOrEqualTo(1 - 1e-12);
      assertThat(s.effectiveNumber()).isGreaterThanOrEqualTo(s.inverseSimpson() - 1e-9);
      assertThat(s.effectiveNumber()).isLessThanOrEqualTo(killing + 1e-9);
    }
    assertThat(s.dominantShare()).isBetween(0.0, 1 + 1e-12);
  }

  /** n sites that do the same, whichever they are and in whichever passes, count n. */
  @Property
  void equalSitesGiveEqualNumbers(@ForAll long seed) {
    Random random = new Random(seed);
    List<Integer> numbers = new ArrayList<>();
    for (int n : SITES) {
      numbers.add(n);
    }
    Collections.shuffle(numbers, random);
    int n = 1 + random.nextInt(SITES.length);
    double pct = 80 + random.nextInt(19);
    List<SprayedPass> passes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      List<SiteControl> one = List.of(site(numbers.get(i), pct, false));
      boolean leaf = random.nextBoolean();
      passes.add(
          new SprayedPass(
              LocalDate.of(2026, 5, 1).plusDays(i),
              "P" + i,
              true,
              leaf ? one : List.of(),
              leaf ? List.of() : one,
              false));
    }
    SeasonSites s = season(passes);
    assertThat(s.effectiveNumber()).isCloseTo(n, within(1e-9));
    assertThat(s.inverseSimpson()).isCloseTo(n, within(1e-9));
    assertThat(s.effective()).hasSize(n);
    assertThat(s.dominantShare()).isCloseTo(1.0 / n, within(1e-9));
  }

  @Property
  void theOrderOfPassesDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    List<SprayedPass> passes = passes(random);
    List<SprayedPass> shuffled = new ArrayList<>(passes);
    Collections.shuffle(shuffled, random);
    SeasonSites a = season(passes);
    SeasonSites b = season(shuffled);
    assertThat(b.effective()).isEqualTo(a.effective());
    assertThat(b.effectiveNumber()).isCloseTo(a.effectiveNumber(), within(1e-9));
    assertThat(b.leaningPct()).isEqualTo(a.leaningPct());
  }

  /** Rows of the journal, of past seasons, weeds and fields in any order: the same audit. */
  @Property(tries = 50)
  void theOrderOfRowsDoesNotMatter(@ForAll long seed) {
    shuffledRows(seed);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void theOrderOfRowsDoesNotMatterInHundredsOfBooks(@ForAll long seed) {
    shuffledRows(seed);
  }

  /** A season that is taken out takes its own figures along and no others. */
  @Property(tries = 50)
  void aSeasonGoneBreaksNoOther(@ForAll long seed) {
    seasonGone(seed);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void aSeasonGoneBreaksNoOtherInHundredsOfBooks(@ForAll long seed) {
    seasonGone(seed);
  }

  private static <T> List<T> drawn(List<T> of, Random random, int most) {
    List<T> out = new ArrayList<>(of);
    Collections.shuffle(out, random);
    return List.copyOf(out.subList(0, Math.min(most, out.size())));
  }

  private static Book book(List<Field> fields, List<Application> rows, List<PastSeason> seasons) {
    return BookParts.of(DEMO).fields(fields).journal(rows).pastSeasons(seasons).whole();
  }

  private static void shuffledRows(long seed) {
    Random random = new Random(seed);
    List<Field> fields = drawn(DEMO.fields(), random, 3);
    // Whole rows are dropped too, so that no two tries are of the same journal.
    List<Application> rows =
        DEMO.journal().applications().stream().filter(r -> random.nextInt(5) > 0).toList();
    Book plain = book(fields, rows, DEMO.pastSeasons());
    Book shuffled =
        book(
            drawn(fields, random, fields.size()),
            drawn(rows, random, rows.size()),
            drawn(DEMO.pastSeasons(), random, DEMO.pastSeasons().size()));
    SiteAudit a = SiteAudit.of(plain, fields);
    SiteAudit b = SiteAudit.of(shuffled, fields);
    assertThat(b.ranked()).isEqualTo(a.ranked());
    assertThat(b.findings()).isEqualTo(a.findings());
    assertThat(b.acres()).isEqualTo(a.acres());
    SiteAudit c = SiteAudit.of(shuffled, shuffled.fields());
    assertThat(c.ranked()).isEqualTo(a.ranked());
  }

  private static void seasonGone(long seed) {
    Random random = new Random(seed);
    List<Field> fields = drawn(DEMO.fields(), random, 2);
    PastSeason gone = DEMO.pastSeasons().get(random.nextInt(DEMO.pastSeasons().size()));
    SiteAudit all = SiteAudit.of(book(fields, rows(), DEMO.pastSeasons()), fields);
    SiteAudit less =
        SiteAudit.of(
            book(fields, rows(), DEMO.pastSeasons().stream().filter(p -> !p.equals(gone)).toList()),
            fields);
    List<SeasonSites> kept =
        all.ranked().stream()
            .map(RankedSites::sites)
            .filter(s -> !(s.field().id().equals(gone.field()) && s.season() == gone.season()))
            .toList();
    assertThat(less.ranked()).hasSameSizeAs(kept);
    for (SeasonSites s : kept) {
      assertThat(less.ranked().stream().map(RankedSites::sites))
          .anySatisfy(
              t -> {
                assertThat(t.field().id()).isEqualTo(s.field().id());
                assertThat(t.weed()).isEqualTo(s.weed());
                assertThat(t.season()).isEqualTo(s.season());
                assertThat(t.passes()).isEqualTo(s.passes());
                assertThat(t.met()).isEqualTo(s.met());
                assertThat(t.dependence()).isEqualTo(s.dependence());
              });
    }
  }

  private static List<Application> rows() {
    return DEMO.journal().applications();
  }
}
