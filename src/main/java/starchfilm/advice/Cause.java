package starchfilm.advice;

import java.util.Optional;
import java.util.function.Function;

/** A possible cause of a fault; its figures and limits stand in the table of rules. */
public enum Cause {
  /** Too little glycerol for the air the film is in. */
  TOO_LITTLE_GLYCEROL(PutRight::glycerol),
  /** Too much glycerol for the air the film is in. */
  TOO_MUCH_GLYCEROL(PutRight::glycerol),
  /** So much glycerol that it parts from the starch. */
  GLYCEROL_PARTED,
  /** Salt from the glycerol or added. */
  SALT,
  /** Poured too thick. */
  POURED_TOO_THICK(PutRight::thinner),
  /** Poured so thin that the edge tears. */
  POURED_TOO_THIN(PutRight::thicker),
  /** Thin at one place and thick at another. */
  POURED_UNEVENLY(PutRight::level),
  /** Poured too cool to level. */
  POURED_TOO_COOL,
  /** A paste too stiff to level and to let bubbles rise. */
  PASTE_TOO_STIFF,
  /** A paste so thin that its starch settles. */
  PASTE_SETTLED,
  /** A starch whose paste is cloudy by nature. */
  OPAQUE_STARCH,
  /** Air so dry or so fast that the film dries before it can give. */
  DRIED_TOO_FAST(PutRight::calmAir),
  /** A cool or damp room that takes up little water. */
  SLOW_ROOM(PutRight::ordinaryRoom),
  /** Air so damp that the film softens in it. */
  DAMP_AIR(PutRight::middlingAir),
  /** Air so dry that the film stiffens in it. */
  DRY_AIR(PutRight::middlingAir),
  /** Granules that never burst. */
  UNDERCOOKED,
  /** Cooked too hot or too long. */
  OVERCOOKED,
  /** Boiled. */
  BOILED,
  /** Starch chains cut by hot acid. */
  ACID_CUT_CHAINS,
  /** Looked for dryness sooner than an ordinary drying takes. */
  LOOKED_TOO_EARLY,
  /** Peeled before it was firm. */
  PEELED_TOO_EARLY,
  /** Moved to a rack or turned before it was firm. */
  MOVED_TOO_EARLY,
  /** A plate that starch film clings to. */
  PLATE_HOLDS_ON,
  /** A plate that lets film go before it is dry. */
  PLATE_LETS_GO,
  /** A film that has stood for weeks. */
  AGED,
  /** The stirring, which nobody notes. */
  STIRRING;

  private final Optional<Function<FaultContext, Optional<PutRight>>> righting;

  Cause() {
    this.righting = Optional.empty();
  }

  Cause(Function<FaultContext, Optional<PutRight>> righting) {
    this.righting = Optional.of(righting);
  }

  /** Whether the model can be rerun with this cause put right. */
  boolean canBePutRight() {
    return righting.isPresent();
  }

  /** The scene's set-up with this cause put right; empty where it is right already. */
  Optional<PutRight> putRight(FaultContext scene) {
    return righting.orElseThrow().apply(scene);
  }
}
