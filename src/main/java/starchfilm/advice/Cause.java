package starchfilm.advice;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.Casting;

/** What may be behind a fault, each with a figure the model or the notebook has for it. */
public enum Cause {
  /** Too little glycerol for the air the film is in. */
  TOO_LITTLE_GLYCEROL(GlycerolCauses::tooLittle, GlycerolCauses::comfortable),
  /** Too much glycerol for the air the film is in. */
  TOO_MUCH_GLYCEROL(GlycerolCauses::tooMuch, GlycerolCauses::comfortable),
  /** So much glycerol that it parts from the starch. */
  GLYCEROL_PARTED(GlycerolCauses::parted),
  /** Salt from the glycerol or added. */
  SALT(GlycerolCauses::salt),
  /** Poured too thick. */
  POURED_TOO_THICK(PourCauses::tooThick, PourCauses::thin),
  /** Poured so thin that the edge tears. */
  POURED_TOO_THIN(PourCauses::tooThin, PourCauses::thicker),
  /** Thin at one place and thick at another. */
  POURED_UNEVENLY(PourCauses::uneven, PourCauses::level),
  /** Poured too cool to level. */
  POURED_TOO_COOL(PourCauses::tooCool),
  /** A paste too stiff to level and to let bubbles rise. */
  PASTE_TOO_STIFF(PasteCauses::tooStiff),
  /** A paste so thin that its starch settles. */
  PASTE_SETTLED(PasteCauses::settled),
  /** A starch whose paste is cloudy by nature. */
  OPAQUE_STARCH(PasteCauses::opaque),
  /** Air so dry or so fast that the film dries before it can give. */
  DRIED_TOO_FAST(RoomCauses::tooFast, RoomCauses::calm),
  /** A cool or damp room that takes up little water. */
  SLOW_ROOM(RoomCauses::slow, RoomCauses::ordinary),
  /** Air so damp that the film softens in it. */
  DAMP_AIR(RoomCauses::damp, RoomCauses::middling),
  /** Air so dry that the film stiffens in it. */
  DRY_AIR(RoomCauses::dry, RoomCauses::middling),
  /** Granules that never burst. */
  UNDERCOOKED(CookCauses::undercooked),
  /** Cooked too hot or too long. */
  OVERCOOKED(CookCauses::overcooked),
  /** Boiled. */
  BOILED(CookCauses::boiled),
  /** Starch chains cut by hot acid. */
  ACID_CUT_CHAINS(CookCauses::acidCut),
  /** Looked for dryness sooner than an ordinary drying takes. */
  LOOKED_TOO_EARLY(PlateCauses::lookedTooEarly),
  /** Peeled before it was firm. */
  PEELED_TOO_EARLY(PlateCauses::peeledTooEarly),
  /** Moved to a rack or turned before it was firm. */
  MOVED_TOO_EARLY(PlateCauses::movedTooEarly),
  /** A plate that starch film clings to. */
  PLATE_HOLDS_ON(PlateCauses::holdsOn),
  /** A plate that lets film go before it is dry. */
  PLATE_LETS_GO(PlateCauses::letsGo),
  /** A film that has stood for weeks. */
  AGED(PlateCauses::aged),
  /** How it was stirred, which nobody notes. */
  STIRRING(scene -> Reading.untold("how it was stirred"));

  /** A cause put right on paper. */
  record PutRight(Casting setup, String words) {}

  private interface Figure {
    Reading read(FaultContext scene);
  }

  private interface Righting {
    Optional<PutRight> of(FaultContext scene);
  }

  private final Figure figure;
  private final @Nullable Righting righting;

  Cause(Figure figure) {
    this(figure, null);
  }

  Cause(Figure figure, @Nullable Righting righting) {
    this.figure = figure;
    this.righting = righting;
  }

  /**
   * The name of the cause in the table of rules, and in a sentence.
   *
   * @return lower case, such as "too little glycerol"
   */
  public String tableName() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The cause's own figure. */
  Reading read(FaultContext scene) {
    return figure.read(scene);
  }

  /** Whether the model can be rerun with this cause put right. */
  boolean canBePutRight() {
    return righting != null;
  }

  /** The scene's set-up with this cause put right; empty where it is right already. */
  Optional<PutRight> putRight(FaultContext scene) {
    if (righting == null) {
      throw new IllegalStateException(tableName() + " cannot be put right on paper");
    }
    return righting.of(scene);
  }
}
