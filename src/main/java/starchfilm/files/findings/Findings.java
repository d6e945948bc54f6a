package starchfilm.files.findings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;

/** The findings of one file that is read: faults, notices, and what is not recorded. */
public final class Findings {
  private final String file;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();
  private final List<NotRecorded> notRecorded = new ArrayList<>();
  private final Set<Path> besides = new LinkedHashSet<>();
  private boolean putAway;

  /**
   * Nothing found yet.
   *
   * @param file the file's name as the user gave it
   */
  public Findings(String file) {
    this.file = file;
  }

  /**
   * The file that the findings are about.
   *
   * @return its name as the user gave it
   */
  public String file() {
    return file;
  }

  /**
   * The faults.
   *
   * @return the faults, in the order they were found
   */
  public List<Fault> faults() {
    return faults;
  }

  /**
   * The notices.
   *
   * @return the notices, in the order they were found
   */
  public List<Notice> notices() {
    return notices;
  }

  /**
   * The assumptions made because nobody noted a value.
   *
   * @return the gaps, in the order they were found
   */
  public List<NotRecorded> notRecorded() {
    return notRecorded;
  }

  /** The files beside this one that were looked at, whether they exist or not. */
  public Set<Path> besides() {
    return besides;
  }

  /** Notes that another file was looked at. */
  public void beside(Path other) {
    besides.add(other);
  }

  /** Returns whether its owner put the file away. */
  public boolean isPutAway() {
    return putAway;
  }

  /** Notes that its owner put the file away. */
  public void putAway() {
    putAway = true;
  }

  /**
   * Notes that a value is wrong.
   *
   * @param value the value
   * @param allowed what is allowed, with its unit
   * @param mend what to do
   */
  public void fault(Located value, String allowed, String mend) {
    fault(value.place(), value.quoted(), allowed, mend);
  }

  /**
   * Notes that something is wrong at a place.
   *
   * @param place where
   * @param given what stands there, shortened
   * @param allowed what is allowed, with its unit; empty where that goes without saying
   * @param mend what to do
   */
  public void fault(Place place, String given, String allowed, String mend) {
    faults.add(new Fault(file, place, given, allowed, mend));
  }

  /**
   * Notes that a file cannot be read at all.
   *
   * @param e why
   */
  public void fault(UnreadableFileException e) {
    fault(e.place(), e.given(), e.allowed(), e.mend());
  }

  /**
   * Notes that something at a place is odd.
   *
   * @param place where
   * @param text what, as a clause
   */
  public void notice(Place place, String text) {
    notices.add(new Notice(file, place, text));
  }

  /** Adds a notice about the whole file. */
  public void notice(String text) {
    notice(Place.of(""), text);
  }

  /** Notes that something is not recorded; the parts of a {@link NotRecorded}. */
  public void notRecorded(String field, String what, String assumed, String cost) {
    notRecorded.add(new NotRecorded(field, what, assumed, cost));
  }

  /**
   * Takes over what turned up in a file that this one names, such as a room log.
   *
   * @param other what turned up there
   */
  public void takeOver(Findings other) {
    faults.addAll(other.faults);
    notices.addAll(other.notices);
    notRecorded.addAll(other.notRecorded);
  }
}
