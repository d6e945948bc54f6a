package starchfilm.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import starchfilm.casting.Spot;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.chart.Scale;

/**
 * The scales all trials of a page share, so that their figures can be compared; found once a page.
 *
 * @param film a scale for each figure of the film, in the reader's unit
 * @param tallestPourM the thickest wet spot of all (m)
 */
record PageScales(Map<FilmFigure, Scale> film, double tallestPourM) {
  /** Copies the map. */
  PageScales {
    film = new EnumMap<>(film);
  }

  /**
   * The scales of a page.
   *
   * @param trials its trials; at least one
   * @return scales that hold every one of them
   */
  static PageScales of(List<TrialForecast> trials) {
    Map<FilmFigure, Scale> film = new EnumMap<>(FilmFigure.class);
    for (FilmFigure figure : FilmFigure.values()) {
      film.put(figure, figure.scale(trials));
    }
    return new PageScales(
        film,
        trials.stream()
            .mapToDouble(trial -> trial.drying().at(Spot.THICK_SPOT).wetThicknessM())
            .max()
            .orElseThrow());
  }

  /**
   * The scale of one figure.
   *
   * @param figure which
   * @return its scale
   */
  Scale of(FilmFigure figure) {
    Scale found = film.get(figure);
    if (found == null) {
      throw new IllegalStateException("no scale for " + figure);
    }
    return found;
  }
}
