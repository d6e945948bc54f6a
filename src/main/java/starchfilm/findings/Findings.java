package starchfilm.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import starchfilm.json.Located;
import starchfilm.json.Located.Place;
import starchfilm.json.UnreadableFileException;
import starchfilm.trial.NotRecorded;

/** What turns up while one file is read: faults, notices, and what is not recorded. */
public final class Findings {
  private final String file;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();
  private final List<NotRecorded> notRecorded = new ArrayList<>();

  /**
   * Nothing found yet.
   *
   * @param file the file's name as the user gave it
   */
  public Findings(String file) {
    this.file = file;
  }

  public String file() {
    return file;
  }

  /**
   * What is wrong.
   *
   * @return the faults, in the order they were found
   */
  public List<Fault> faults() {
    return faults;
  }

  public List<Notice> notices() {
    return notices;
  }

  public List<NotRecorded> notRecorded() {
    return notRecorded;
  }

  public void fault(Located value, String allowed, String mend) {
    fault(value.place(), value.quoted(), allowed, mend);
  }

  public void fault(Place place, String given, String allowed, String mend) {
    faults.add(
        new Fault(
            file,
            OptionalInt.of(place.line()),
            OptionalInt.of(place.column()),
            place.path(),
            given,
            allowed,
            mend));
  }

  /**
   * Notes that a file cannot be read at all.
   *
   * @param e why
   */
  public void fault(UnreadableFileException e) {
    faults.add(new Fault(file, e.line(), e.column(), "", e.given(), e.allowed(), e.mend()));
  }

  public void fault(int line, String given, String allowed, String mend) {
    faults.add(
        new Fault(file, OptionalInt.of(line), OptionalInt.empty(), "", given, allowed, mend));
  }

  public void notice(Place place, String text) {
    notices.add(new Notice(file, OptionalInt.of(place.line()), place.path(), text));
  }

  public void notice(OptionalInt line, String text) {
    notices.add(new Notice(file, line, "", text));
  }

  public void notRecorded(String field, String assumed, String cost) {
    notRecorded.add(new NotRecorded(field, assumed, cost));
  }

  /** Takes over what turned up in a file that this one names, such as a room log. */
  public void takeOver(Findings other) {
    faults.addAll(other.faults);
    notices.addAll(other.notices);
    notRecorded.addAll(other.notRecorded);
  }
}
