package starchfilm.report;

import starchfilm.casting.trial.ObservedFault;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;

/**
 * Advice on a film that failed: common practice, no source, with its limits.
 *
 * <p>Cooked again a film needs the water back that it lost; a second cook with acid in it cuts the
 * chains further.
 */
final class FailedFilm {
  private FailedFilm() {}

  /** What to do. */
  public static String todo(ObservedFault fault, TrialForecast trial) {
    return switch (fault.kind()) {
      case CRACKED, BROKE_APART, BRITTLE, UNEVEN, LUMPS, BUBBLES, CLOUDY -> cookAgain(trial);
      case CURLED, SHRANK ->
          "Lay it between damp cloths until limp, then dry it pressed under a"
              + " board and turn it daily; what has shrunk stays small.";
      case STILL_WET ->
          "Keep drying it, peeled and on a rack once it is firm; throw it away"
              + " at the first sign of mould.";
      case STICKY ->
          "Keep drying it in drier air, between sheets of baking paper. If it"
              + " still sticks, it has too much glycerol: cook it again with more starch.";
      case STUCK ->
          "Lay a wet cloth on it for an hour, then peel it while it is limp; scrape off what"
              + " tears.";
      case MOULD, SCORCHED ->
          "Bag it and throw it away; cooking it again removes neither mould nor scorch marks.";
    };
  }

  private static String cookAgain(TrialForecast trial) {
    double start = trial.drying().startMoisture();
    double rest = Math.min(start, trial.film().equilibriumMoisture().middle());
    return "If it is clean, you can cook it again once: break it up and soak it overnight in "
        + Figures.two((start - rest) / (1 + rest))
        + " times its weight of water, as much as it lost. The new film is somewhat"
        + " weaker. Never reuse film with mould on it.";
  }
}
