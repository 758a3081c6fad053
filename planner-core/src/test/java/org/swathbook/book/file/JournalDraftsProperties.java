package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Rows in columns are found as if every row ahead were compared. */
class JournalDraftsProperties {
  private record Row(String id, String line) {}

  @Property(tries = 60)
  void rowsAreFoundAsInAPlainList(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 400) int passes,
      @ForAll @IntRange(min = 1, max = 60) int lines) {
    Random random = new Random(seed);
    JournalDrafts drafts = new JournalDrafts();
    List<Row> plain = new ArrayList<>();
    for (int i = 0; i < 900; i++) {
      Row row = new Row("A-" + random.nextInt(passes), String.valueOf(random.nextInt(lines)));
      int first = plain.indexOf(row);
      // What stands behind a row is looked up before it goes in, as a row that corrects does it.
      assertThat(drafts.find(row.id + "/" + row.line))
          .isEqualTo(first < 0 ? List.of() : List.of(first));
      assertThat(drafts.find(row.id)).isEqualTo(ofPass(plain, row.id));
      assertThat(drafts.add(i + 2, row.id, row.line, null, List.of())).isEqualTo(first);
      plain.add(row);
    }
    assertThat(drafts.size()).isEqualTo(plain.size());
    for (int i = 0; i < plain.size(); i++) {
      Row row = plain.get(i);
      assertThat(drafts.row(i)).isEqualTo(i + 2);
      assertThat(drafts.key(i)).isEqualTo(row.id + "/" + row.line);
      assertThat(drafts.is(i, row.id, row.line)).isTrue();
      assertThat(drafts.pass(i)).isEqualTo(ofPass(plain, row.id).get(0));
      assertThat(drafts.same(new String(row.id))).isSameAs(plain.get(drafts.pass(i)).id);
    }
  }

  private static List<Integer> ofPass(List<Row> rows, String id) {
    List<Integer> out = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).id.equals(id)) {
        out.add(i);
      }
    }
    return out;
  }

  /** "Aa" and "BB" have one hash, and so has every row of them. */
  @Property(tries = 20)
  void passesOfOneHashAreToldApart(@ForAll @IntRange(min = 2, max = 6) int pairs) {
    JournalDrafts drafts = new JournalDrafts();
    int ids = 1 << pairs;
    for (int i = 0; i < ids; i++) {
      assertThat(drafts.add(i, id(i, pairs), "1", null, List.of())).isEqualTo(JournalDrafts.NONE);
    }
    for (int i = 0; i < ids; i++) {
      assertThat(id(i, pairs)).hasSameHashCodeAs(id(0, pairs));
      assertThat(drafts.find(id(i, pairs))).containsExactly(i);
    }
  }

  private static String id(int bits, int pairs) {
    StringBuilder out = new StringBuilder();
    for (int p = 0; p < pairs; p++) {
      out.append((bits >> p & 1) == 0 ? "Aa" : "BB");
    }
    return out.toString();
  }
}
