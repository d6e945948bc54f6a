package starchfilm.report.data;

import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Notice;
import starchfilm.files.json.Located.Place;
import starchfilm.files.notebook.Notebook;
import starchfilm.report.data.AnswerTable.AnswerRow;

/** The faults of files, for other programs. */
public final class CheckedFiles {
  private CheckedFiles() {}

  /** A row a fault or notice, and one a sound trial. */
  public static AnswerTable table(Notebook notebook) {
    AnswerTable table = new AnswerTable("check");
    for (Trial trial : notebook.trials()) {
      table
          .row("trial", trial.name())
          .put("file", String.valueOf(trial.file()))
          .put("remarks", "sound");
    }
    for (Fault fault : notebook.faults()) {
      at(table.row("fault", ""), fault.file(), fault.place())
          .put("given", fault.given())
          .put("allowed", fault.allowed())
          .put("mend", fault.mend());
    }
    for (Notice notice : notebook.notices()) {
      at(table.row("notice", ""), notice.file(), notice.place()).put("remarks", notice.text());
    }
    return table;
  }

  private static AnswerRow at(AnswerRow row, String file, Place place) {
    return row.put("line", known(place.line()))
        .put("column", known(place.column()))
        .put("file", file)
        .put("field", place.path());
  }

  private static double known(int place) {
    return place > 0 ? place : Double.NaN;
  }
}
