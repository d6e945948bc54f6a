package starchfilm.change;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;

/**
 * One thing a maker can change, with the steps worth trying, mildest first, none beyond {@link
 * Limits}.
 */
public enum Change {
  /** Less paste a plate. */
  POUR_THINNER(Thing.THICKNESS, Setting.WET_THICKNESS, Ladders::thinner),
  /** More paste a plate. */
  POUR_THICKER(Thing.THICKNESS, Setting.WET_THICKNESS, Ladders::thicker),
  /** A level plate. */
  LEVEL_THE_PLATE(Thing.LEVEL, Setting.UNEVENNESS, Ladders::level),
  /** Hotter paste on the plate. */
  POUR_HOTTER(Thing.WARMTH, Setting.PASTE_TEMPERATURE, Ladders::hotterPaste),
  /** More glycerol to the same starch. */
  MORE_GLYCEROL(Thing.GLYCEROL, Setting.GLYCEROL, Ladders::moreGlycerol),
  /** Less glycerol to the same starch. */
  LESS_GLYCEROL(Thing.GLYCEROL, Setting.GLYCEROL, Ladders::lessGlycerol),
  /** Glycerol without salt; how much that leaves, only the recipe tells. */
  CLEANER_GLYCEROL(Thing.GLYCEROL, Setting.SALT, (casting, from) -> DoubleStream.empty()),
  /** More water to the same starch. */
  MORE_WATER(Thing.WATER, Setting.CONCENTRATION, Ladders::moreWater),
  /** Less water to the same starch. */
  LESS_WATER(Thing.WATER, Setting.CONCENTRATION, Ladders::lessWater),
  /** Less vinegar to the same starch. */
  LESS_VINEGAR(Thing.VINEGAR, Setting.VINEGAR, Ladders::lessVinegar),
  /** A starch with a clear paste. */
  CLEARER_STARCH(Thing.STARCH, Other::clearerStarch),
  /** No draught. */
  CALMER_AIR(Thing.AIR, Setting.AIR_SPEED, Ladders::calmer),
  /** A cover that keeps the air over the plate damp. */
  COVER_THE_PLATE(Thing.AIR, Setting.HUMIDITY, Ladders::damper),
  /** A fan. */
  FAN(Thing.AIR, Setting.AIR_SPEED, Ladders::fan),
  /** Drier air. */
  DRIER_ROOM(Thing.AIR, Setting.HUMIDITY, Ladders::drier),
  /** Warmer air. */
  WARMER_ROOM(Thing.AIR, Setting.AIR_TEMPERATURE, Ladders::warmer),
  /** Another room of the notebook; only the notebook knows which there are. */
  ANOTHER_ROOM(Thing.AIR),
  /** A hotter cook. */
  COOK_HOTTER(Thing.COOK, Setting.COOK_TEMPERATURE, Ladders::hotterCook),
  /** A longer cook. */
  COOK_LONGER(Thing.COOK, Setting.COOK_TIME, Ladders::longerCook),
  /** A cooler cook. */
  COOK_COOLER(Thing.COOK, Setting.COOK_TEMPERATURE, Ladders::coolerCook),
  /** A shorter cook. */
  COOK_SHORTER(Thing.COOK, Setting.COOK_TIME, Ladders::shorterCook),
  /** Peeling or looking later; the casting stays as it is. */
  WAIT_LONGER(Thing.TIME),
  /** No rack before it is firm. */
  KEEP_IT_ON_THE_PLATE(Thing.PLATE, Other::onThePlate),
  /** A rack, for a plate under way; when it can be moved there, only its forecast knows. */
  ONTO_A_RACK(Thing.PLATE),
  /** A plate that film comes off. */
  A_PLATE_THAT_LETS_GO(Thing.PLATE, Other::slipperyPlate),
  /** A plate that film stays on. */
  A_PLATE_THAT_HOLDS_ON(Thing.PLATE, Other::clingingPlate);

  /** The thing that is changed: never two changes of one thing at once. */
  public enum Thing {
    /** Thickness of the pour. */
    THICKNESS,
    /** Levelness of the pour. */
    LEVEL,
    /** Temperature of the paste. */
    WARMTH,
    /** Glycerol and what it brings along. */
    GLYCEROL,
    /** Water. */
    WATER,
    /** Vinegar. */
    VINEGAR,
    /** Kind of starch. */
    STARCH,
    /** The air. */
    AIR,
    /** The cook. */
    COOK,
    /** The time to peel. */
    TIME,
    /** The plate and the time on it. */
    PLATE
  }

  private final Thing thing;
  private final Optional<Setting> setting;

  /** The castings worth trying, mildest first. */
  private final Function<Casting, List<Casting>> castings;

  Change(Thing thing, Setting setting, BiFunction<Casting, Double, DoubleStream> ladder) {
    this.thing = thing;
    this.setting = Optional.of(setting);
    this.castings =
        casting ->
            setting.isFree(casting)
                ? ladder
                    .apply(casting, setting.of(casting))
                    .mapToObj(to -> setting.set(casting, to))
                    .toList()
                : List.of();
  }

  Change(Thing thing) {
    this(thing, casting -> List.of());
  }

  Change(Thing thing, Function<Casting, List<Casting>> castings) {
    this.thing = thing;
    this.setting = Optional.empty();
    this.castings = castings;
  }

  /** The thing that is changed. */
  public Thing thing() {
    return thing;
  }

  /**
   * The figure that is set.
   *
   * @throws java.util.NoSuchElementException where it is no figure, as with another kind of starch
   */
  public Setting setting() {
    return setting.orElseThrow();
  }

  /**
   * The steps from a casting.
   *
   * @return mildest first; empty where there is nothing to change
   */
  public List<ChangeStep> steps(Casting casting) {
    return castings.apply(casting).stream()
        .map(after -> new ChangeStep(this, casting, after))
        .toList();
  }

  /** A step that shows: the second where there are more, for the first is mild. */
  public Optional<ChangeStep> clearStep(Casting casting) {
    return steps(casting).stream().limit(2).reduce((mild, clear) -> clear);
  }
}
