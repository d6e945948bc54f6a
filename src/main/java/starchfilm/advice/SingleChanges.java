package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Trial;
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
  private static final double SAME_PER_STARCH = 0.01;
  private static final double SAME_UNEVENNESS = 0.02;
  private static final double SAME_HUMIDITY = 0.03;
  private static final double SAME_K = 2;

  private final Trial earlier;
  private final Trial later;
  private final Casting before;
  private final Casting after;
  private final List<SingleChange> found = new ArrayList<>();
  private final List<String> notNoted = new ArrayList<>();

  /** One difference and the first set-up with it alone. */
  record SingleChange(String what, String from, String to, Casting alone) {}

  private SingleChanges(Trial earlier, Trial later) {
    this.earlier = earlier;
    this.later = later;
    this.before = earlier.casting();
    this.after = later.casting();
  }

  static SingleChanges between(Trial earlier, Trial later) {
    SingleChanges changes = new SingleChanges(earlier, later);
    changes.inThePot();
    changes.atTheStove();
    changes.atThePour();
    changes.inTheRoom();
    changes.inUse();
    return changes;
  }

  List<SingleChange> found() {
    return List.copyOf(found);
  }

  List<String> notNoted() {
    return List.copyOf(notNoted);
  }

  private void inThePot() {
    if (!SetupWords.starch(before).equals(SetupWords.starch(after))) {
      add(
          "starch",
          SetupWords::starch,
          before.with(before.composition().withStarches(after.composition().starchShares())));
    }
    compare(
        "recipe.water",
        "water",
        "dry starch in the paste",
        Setting.WATER,
        SingleChanges::differ,
        setup -> Told.percent(setup.composition().dryStarch()));
    compare(
        "recipe.glycerol.mass_g",
        "glycerol",
        "glycerol per 100 g dry starch",
        Setting.GLYCEROL,
        SingleChanges::differ,
        setup -> Told.level(Setting.GLYCEROL.of(setup)));
    compare(
        "recipe.glycerol.salt_pct",
        "salt",
        "salt of the dry solids",
        Setting.SALT,
        apart(SAME_PER_STARCH),
        setup -> Told.percent(setup.composition().saltFractionOfDry()));
    compare(
        "recipe.vinegar.mass_g",
        "vinegar",
        "acid per 100 g dry starch",
        Setting.VINEGAR,
        apart(SAME_PER_STARCH),
        setup -> Told.level(Setting.VINEGAR.of(setup)));
  }

  private void atTheStove() {
    compare(
        "cook.top_C",
        "heat of the cook",
        "top of the cook",
        Setting.COOK_TEMPERATURE,
        apart(SAME_K),
        setup -> Told.celsius(Setting.COOK_TEMPERATURE.of(setup)));
    compare(
        "cook.minutes",
        "time of the cook",
        "time of the cook",
        Setting.COOK_TIME,
        SingleChanges::differ,
        setup -> Told.minutes(Setting.COOK_TIME.of(setup)));
  }

  private void atThePour() {
    compare(
        "pour.wet_thickness_mm",
        "thickness of the pour",
        "wet thickness",
        Setting.WET_THICKNESS,
        SingleChanges::differ,
        setup -> Told.millimetres(setup.wetThicknessM()));
    compare(
        "pour.unevenness_pct",
        "unevenness",
        "unevenness",
        Setting.UNEVENNESS,
        apart(SAME_UNEVENNESS),
        setup -> Told.percent(Setting.UNEVENNESS.of(setup)));
    compare(
        "pour.paste_C",
        "warmth of the paste",
        "paste when poured",
        Setting.PASTE_TEMPERATURE,
        apart(SAME_K),
        setup -> Told.celsius(Setting.PASTE_TEMPERATURE.of(setup)));
    if (noted("pour.plate.material", "plate")
        && !SetupWords.plate(before).equals(SetupWords.plate(after))) {
      add("plate", SetupWords::plate, before.with(after.plate()));
    }
    if (!before.faces().equals(after.faces())) {
      add("turned or racked", SetupWords::faces, before.with(after.faces()));
    }
  }

  /** Adds a figure that both files note and that differs. */
  private void compare(
      String field,
      String notNoted,
      String what,
      Setting setting,
      BiPredicate<Double, Double> differ,
      Function<Casting, String> words) {
    double is = setting.of(after);
    if (noted(field, notNoted) && differ.test(setting.of(before), is)) {
      add(what, words, setting.set(before, is));
    }
  }

  private void inTheRoom() {
    if (noted("room.air_C", "warmth of the room")
        && noted("room.rh_pct", "humidity of the room")
        && !sameRoom()) {
      add("room", SetupWords::room, before.with(after.place()));
    }
  }

  private boolean sameRoom() {
    boolean sameBench =
        before.place().benchTemperatureK().equals(after.place().benchTemperatureK());
    if (before.place().room() instanceof ConstantRoom was
        && after.place().room() instanceof ConstantRoom is) {
      return sameBench && sameAir(was.air(), is.air());
    }
    return sameBench && before.place().room().equals(after.place().room());
  }

  private static boolean sameAir(AirState was, AirState is) {
    return !apart(SAME_K).test(was.temperatureK(), is.temperatureK())
        && !apart(SAME_HUMIDITY).test(was.relativeHumidity(), is.relativeHumidity())
        && !differ(was.speedMPerS(), is.speedMPerS());
  }

  private void inUse() {
    if (!before.use().equals(after.use())) {
      add("used at", SetupWords::use, before.with(after.use()));
    }
  }

  /** Whether both files say something of a field; if not, that is listed. */
  private boolean noted(String field, String what) {
    boolean both = Notes.hold(earlier, field) && Notes.hold(later, field);
    if (!both) {
      notNoted.add(what);
    }
    return both;
  }

  private void add(String what, Function<Casting, String> words, Casting alone) {
    found.add(new SingleChange(what, words.apply(before), words.apply(after), alone));
  }

  private static BiPredicate<Double, Double> apart(double same) {
    return (was, is) -> Math.abs(is - was) > same;
  }

  private static boolean differ(double was, double is) {
    return Math.abs(is - was) > SAME_RATIO * Math.max(was, is);
  }
}
