package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.material.air.AirState;

/**
 * The differences between two trials, each with the first trial changed in that alone.
 *
 * <p>The paste is compared per kilogram of dry starch, so that more water is not mistaken for less
 * of everything else. Figures closer than 4 %, 2 K or 3 points of humidity count as the same, since
 * doing it again comes no closer (judged). What either file leaves out is no difference, but is
 * listed.
 */
final class SingleChanges {
  private static final double SAME_RATIO = 0.04;
  private static final double SAME_HUMIDITY = 0.03;
  private static final double SAME_K = 2;

  private final FaultContext before;
  private final FaultContext after;
  private final List<SingleChange> found = new ArrayList<>();
  private final List<String> notNoted = new ArrayList<>();

  /** One difference, and what the model makes of the first set-up with it alone. */
  record SingleChange(String what, String from, String to, ForecastCache alone) {}

  /**
   * A figure that is compared: one row of the table.
   *
   * @param field the field both files must note
   * @param notNoted what is named where one does not, a noun phrase
   * @param what the figure, a noun phrase
   * @param setting what sets it
   * @param figure how it is worded
   * @param same figures that lie no further apart are the same, in its SI unit; 0 where a ratio
   *     tells
   */
  record Compared(
      String field,
      String notNoted,
      String what,
      Setting setting,
      AdviceFigure figure,
      double same) {
    boolean differs(double was, double is) {
      return same > 0 ? Math.abs(is - was) > same : differ(was, is);
    }
  }

  private SingleChanges(FaultContext before, FaultContext after) {
    this.before = before;
    this.after = after;
  }

  static SingleChanges between(FaultContext before, FaultContext after, List<Compared> figures) {
    SingleChanges changes = new SingleChanges(before, after);
    changes.words(
        "starch",
        AdviceFigure.STARCHES,
        casting ->
            casting.with(
                casting.composition().withStarches(after.setup().composition().starchShares())));
    figures.forEach(changes::compare);
    if (changes.noted("pour.plate.material", "plate")) {
      changes.words("plate", AdviceFigure.PLATE, casting -> casting.with(after.setup().plate()));
    }
    changes.words(
        "turned or racked", AdviceFigure.FACES, casting -> casting.with(after.setup().faces()));
    if (changes.noted("room.air_C", "warmth of the room")
        && changes.noted("room.rh_pct", "humidity of the room")
        && !sameRoom(before.setup(), after.setup())) {
      changes.add("room", AdviceFigure.ROOM, before.setup().with(after.setup().place()));
    }
    if (!before.setup().use().equals(after.setup().use())) {
      changes.add("used at", AdviceFigure.USE, before.setup().with(after.setup().use()));
    }
    return changes;
  }

  List<SingleChange> found() {
    return List.copyOf(found);
  }

  List<String> notNoted() {
    return List.copyOf(notNoted);
  }

  /** Adds a figure that both files note and that differs. */
  private void compare(Compared row) {
    double is = row.setting().of(after.setup());
    if (noted(row.field(), row.notNoted()) && row.differs(row.setting().of(before.setup()), is)) {
      add(row.what(), row.figure(), row.setting().set(before.setup(), is));
    }
  }

  /** Adds what is stated otherwise. */
  private void words(String what, AdviceFigure figure, UnaryOperator<Casting> change) {
    if (!figure.words(before).equals(figure.words(after))) {
      add(what, figure, change.apply(before.setup()));
    }
  }

  private static boolean sameRoom(Casting before, Casting after) {
    boolean sameBench =
        before.place().benchTemperatureK().equals(after.place().benchTemperatureK());
    if (before.room().isConstant() && after.room().isConstant()) {
      return sameBench && sameAir(before.room().at(0), after.room().at(0));
    }
    return sameBench && before.room().equals(after.room());
  }

  private static boolean sameAir(AirState was, AirState is) {
    return Math.abs(is.temperatureK() - was.temperatureK()) <= SAME_K
        && Math.abs(is.relativeHumidity() - was.relativeHumidity()) <= SAME_HUMIDITY
        && !differ(was.speedMPerS(), is.speedMPerS());
  }

  /** Whether both files say something of a field; if not, that is listed. */
  private boolean noted(String field, String what) {
    boolean both = before.notes(field) && after.notes(field);
    if (!both) {
      notNoted.add(what);
    }
    return both;
  }

  private void add(String what, AdviceFigure figure, Casting alone) {
    found.add(
        new SingleChange(
            what, figure.words(before), figure.words(after), before.outlook().of(alone)));
  }

  private static boolean differ(double was, double is) {
    return Math.abs(is - was) > SAME_RATIO * Math.max(was, is);
  }
}
