package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.Pour;
import starchfilm.casting.trial.Trial;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Ingredient;

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
    Composition was = before.composition();
    Composition is = after.composition();
    if (!SetupWords.starch(before).equals(SetupWords.starch(after))) {
      add("starch", SetupWords::starch, before.with(was.withStarches(is.starchShares())));
    }
    if (noted("recipe.water", "water")
        && differ(was.perStarch(Ingredient.WATER), is.perStarch(Ingredient.WATER))) {
      add(
          "dry starch in the paste",
          setup -> Told.percent(setup.composition().dryStarch()),
          alike(Ingredient.WATER));
    }
    if (noted("recipe.glycerol.mass_g", "glycerol")
        && differ(was.perStarch(Ingredient.GLYCEROL), is.perStarch(Ingredient.GLYCEROL))) {
      add(
          "glycerol to 100 g dry starch",
          setup -> Told.level(setup.composition().glycerolPerDryStarch()),
          alike(Ingredient.GLYCEROL));
    }
    if (noted("recipe.glycerol.salt_pct", "salt")
        && Math.abs(is.perStarch(Ingredient.SALT) - was.perStarch(Ingredient.SALT))
            > SAME_PER_STARCH) {
      add(
          "salt of the dry solids",
          setup -> Told.percent(setup.composition().saltFractionOfDry()),
          alike(Ingredient.SALT));
    }
    if (noted("recipe.vinegar.mass_g", "vinegar")
        && Math.abs(is.perStarch(Ingredient.VINEGAR) - was.perStarch(Ingredient.VINEGAR))
            > SAME_PER_STARCH) {
      add(
          "acid to 100 g dry starch",
          setup -> Told.level(setup.composition().perStarch(Ingredient.VINEGAR)),
          alike(Ingredient.VINEGAR));
    }
  }

  /** The first with as much of an ingredient to the same starch as the second. */
  private Casting alike(Ingredient ingredient) {
    Composition paste = before.composition();
    return before.with(
        paste.with(ingredient, after.composition().perStarch(ingredient) * paste.dryStarch()));
  }

  private void atTheStove() {
    Cook was = before.cook();
    Cook is = after.cook();
    if (noted("cook.top_C", "heat of the cook")
        && apart(was.topTemperatureK().value(), is.topTemperatureK().value(), SAME_K)) {
      add(
          "top of the cook",
          setup -> Told.celsius(setup.cook().topTemperatureK().value()),
          before.with(new Cook(was.durationS(), is.topTemperatureK(), was.waterLostKg())));
    }
    if (noted("cook.minutes", "time of the cook")
        && differ(was.durationS().value(), is.durationS().value())) {
      add(
          "time of the cook",
          setup -> Told.minutes(setup.cook().durationS().value()),
          before.with(new Cook(is.durationS(), was.topTemperatureK(), was.waterLostKg())));
    }
  }

  private void atThePour() {
    Pour was = before.pour();
    Pour is = after.pour();
    if (noted("pour.wet_thickness_mm", "thickness of the pour")
        && differ(before.wetThicknessM(), after.wetThicknessM())) {
      add(
          "wet thickness",
          setup -> Told.millimetres(setup.wetThicknessM()),
          before.pouredTo(after.wetThicknessM()));
    }
    if (noted("pour.unevenness_pct", "unevenness")
        && apart(was.unevenness(), is.unevenness(), SAME_UNEVENNESS)) {
      add(
          "unevenness",
          setup -> Told.percent(setup.pour().unevenness()),
          before.with(was.withUnevenness(is.unevenness())));
    }
    if (noted("pour.paste_C", "warmth of the paste")
        && apart(was.pasteTemperatureK(), is.pasteTemperatureK(), SAME_K)) {
      add(
          "paste when poured",
          setup -> Told.celsius(setup.pour().pasteTemperatureK()),
          before.with(was.withPasteTemperature(is.pasteTemperatureK())));
    }
    if (noted("pour.plate.material", "plate")
        && !SetupWords.plate(before).equals(SetupWords.plate(after))) {
      add("plate", SetupWords::plate, before.with(after.plate()));
    }
    if (!before.faces().equals(after.faces())) {
      add("turned or racked", SetupWords::faces, before.with(after.faces()));
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
    return !apart(was.temperatureK(), is.temperatureK(), SAME_K)
        && !apart(was.relativeHumidity(), is.relativeHumidity(), SAME_HUMIDITY)
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

  private static boolean apart(double was, double is, double same) {
    return Math.abs(is - was) > same;
  }

  private static boolean differ(double was, double is) {
    return Math.abs(is - was) > SAME_RATIO * Math.max(was, is);
  }
}
