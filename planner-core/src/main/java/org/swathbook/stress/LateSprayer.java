package org.swathbook.stress;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.outcome.PassOutcome;

/** The sprayer comes so many days late to the first pass over the crop; other passes stay. */
record LateSprayer(int days) implements StressCase {

  @Override
  public String name() {
    return "late-post-" + days + "-days";
  }

  @Override
  public Posed pose(Situation plain) {
    Optional<PassOutcome> post = plain.firstPost();
    if (post.isEmpty()) {
      return Posed.not("sprayer " + days + " days late at the first post", "no pass over the crop");
    }
    PassOutcome pass = post.get();
    String title = "sprayer " + days + " days late at pass " + (pass.index() + 1);
    if (pass.planned().isBefore(plain.today())) {
      return Posed.not(title, "its date is over");
    }
    LocalDate late = pass.planned().plusDays(days);
    Program old = plain.program();
    Pass moved = new Pass(new Anchor.OnDate(late), plain.written(pass).mix());
    Stressed stressed =
        new Stressed(
            "",
            plain.book(),
            plain.traces(),
            old.replacing(plain.places().get(pass.index()), moved),
            Stressed.all(old),
            late,
            List.of(),
            plain.book().resprayExtra(),
            Optional.empty(),
            Optional.empty());
    return Posed.one(title, stressed, List.of());
  }
}
