package starchfilm.advice;

import starchfilm.casting.Casting;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Plate;

/** What a set-up is, in a few words. */
final class SetupWords {
  /** A starch with a smaller share is not named. */
  private static final double TRACE = 0.02;

  private SetupWords() {}

  static String starch(Casting setup) {
    return String.join(
        " and ",
        setup.composition().starchShares().entrySet().stream()
            .filter(share -> share.getValue() > TRACE)
            .map(
                share ->
                    (share.getValue() > 1 - TRACE ? "" : Told.percent(share.getValue()) + " ")
                        + share.getKey().tradeName())
            .toList());
  }

  static String plate(Casting setup) {
    Plate plate = setup.plate();
    return plate.material().tradeName()
        + ", "
        + size(plate)
        + (plate.rimHeightM() > 0 ? ", rim " + Told.millimetres(plate.rimHeightM()) : "");
  }

  private static String size(Plate plate) {
    String across = Math.round(1e3 * plate.shortestM()) + " mm";
    return switch (plate.outline()) {
      case FREE -> Math.round(1e4 * plate.areaM2()) + " cm\u00B2";
      case RECTANGLE -> Math.round(1e3 * plate.longestM()) + " by " + across;
      case ELLIPSE ->
          plate.isRound()
              ? across + " round"
              : Math.round(1e3 * plate.longestM()) + " by " + across + " oval";
    };
  }

  static String faces(Casting setup) {
    if (setup.faces().isEmpty()) {
      return "no";
    }
    FaceChange first = setup.faces().get(0);
    String how =
        switch (first.open()) {
          case UPPER -> "back on its plate";
          case TURNED -> "turned over";
          case BOTH -> "on a rack";
        };
    return how + " after " + Told.span(first.timeS());
  }

  static String room(Casting setup) {
    return setup.place().name() + ", " + RoomCauses.words(RoomCauses.meanAir(setup.place()));
  }

  static String use(Casting setup) {
    return Told.celsius(setup.use().temperatureK())
        + " and "
        + Told.percent(setup.use().relativeHumidity())
        + " after "
        + Told.span(setup.use().ageS());
  }
}
