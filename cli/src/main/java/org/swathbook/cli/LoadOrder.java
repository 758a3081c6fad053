package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.check.DayLoads;
import org.swathbook.check.Judgement;
import org.swathbook.cli.json.LoadOrderJson;
import org.swathbook.cli.report.LoadOfDay;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.LoadOrderText;
import org.swathbook.cli.work.NamedJob;
import org.swathbook.cli.work.TankOnItsDay;
import org.swathbook.program.SprayJob;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.tank.LoadSequence;

/**
 * {@code load} with several mixes: the order in which one sprayer makes them.
 *
 * @param isBlocked whether one of them is
 */
record LoadOrder(String report, boolean isBlocked) {

  /**
   * @param names of mixes, two or more
   */
  static LoadOrder of(
      Book book, BookPaths paths, List<String> names, LocalDate today, boolean json) {
    Problems problems = new Problems();
    if (names.size() > LoadSequence.MOST_LOADS) {
      problems.add(
          Mark.startOf("load"),
          names.size() + " mixes are too many for one sprayer and day",
          "name up to " + LoadSequence.MOST_LOADS);
      problems.throwIfAny();
    }
    List<NamedJob> named = names.stream().map(name -> NamedJob.mix(book, paths, name)).toList();
    List<SprayJob> jobs = named.stream().map(NamedJob::job).toList();
    for (NamedJob n : named) {
      if (!n.job().date().equals(jobs.get(0).date())) {
        problems.add(
            Mark.startOf(n.source()),
            "it is for "
                + n.job().date()
                + ", and "
                + named.get(0).source()
                + " for "
                + jobs.get(0).date(),
            "name mixes of one day");
      }
    }
    if (DayLoads.answers(jobs).size() > 1) {
      problems.add(
          Mark.startOf("load"),
          "the mixes do not agree on what the sprayer held before (sprayer: lastLoad, cleaned,"
              + " earlier), and one sprayer is meant",
          "say the same in each, or leave it out of all but one");
    }
    problems.throwIfAny();
    DayLoads day = DayLoads.of(book, jobs);
    List<LoadOfDay> loads = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      TankOnItsDay tank = TankOnItsDay.of(book, paths, day.asOrdered(i));
      Judgement judgement = tank.judge(book, today).judge(tank.job()).judgement();
      loads.add(LoadOfDay.of(named.get(i).name(), tank.field(), judgement));
    }
    ReportHead head =
        ReportHead.of(book, loads.stream().map(LoadOfDay::field).distinct().toList(), today);
    return new LoadOrder(
        json ? LoadOrderJson.of(head, loads, day) : LoadOrderText.of(book, head, loads, day),
        loads.stream().anyMatch(LoadOfDay::isBlocked));
  }
}
