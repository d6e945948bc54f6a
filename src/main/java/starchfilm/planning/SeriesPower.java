package starchfilm.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import starchfilm.drying.DryingForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.numerics.evidence.Band;
import starchfilm.planning.TrendPower.Response;

/** What of a series will show. */
final class SeriesPower {
  /** Likely cases for the scatter of one time. */
  private static final int DRAWS = DryingForecaster.DRAWS;

  private SeriesPower() {}

  /** For each thing that is forecast in every group; others are left out. */
  static List<TrendPower> of(
      SeriesRequest series, List<Series.Group> groups, PlateScatter scatter) {
    List<TrendPower> shows = new ArrayList<>();
    PlannedRecipe middle = groups.get(groups.size() / 2).recipe();
    Band own =
        new DryingForecaster(scatter.drying(), DRAWS).forecast(middle.casting()).dryThroughS();
    if (Double.isFinite(own.high())) {
      double logSd = Math.log(own.high() / own.low()) / (2 * Band.Z90);
      add(
          shows,
          Response.DRY_THROUGH,
          series,
          groups,
          logSd,
          r -> r.drying().dryThroughS().middle());
    }
    add(
        shows,
        Response.STRETCH,
        series,
        stated(groups, FilmProperty.ELONGATION),
        scatter.stretchLogSd(),
        recipe -> recipe.film().elongationAtBreak().middle());
    add(
        shows,
        Response.STRENGTH,
        series,
        stated(groups, FilmProperty.TENSILE_STRENGTH),
        scatter.strengthLogSd(),
        recipe -> recipe.film().tensileStrengthPa().middle());
    return shows;
  }

  /** The groups where all of them state a property, none else. */
  private static List<Series.Group> stated(List<Series.Group> groups, FilmProperty property) {
    return groups.stream().allMatch(group -> group.recipe().film().withheld(property).isEmpty())
        ? groups
        : List.of();
  }

  private static void add(
      List<TrendPower> shows,
      Response what,
      SeriesRequest series,
      List<Series.Group> groups,
      double logSd,
      Function<PlannedRecipe, Double> figure) {
    List<Double> middles = groups.stream().map(Series.Group::recipe).map(figure).toList();
    List<Double> weighed = groups.stream().map(Series.Group::weighed).toList();
    boolean varies = weighed.stream().distinct().count() > 1;
    if (varies && logSd > 0 && middles.stream().allMatch(m -> m > 0 && Double.isFinite(m))) {
      shows.add(TrendPower.of(what, weighed, middles, logSd, series.platesEach()));
    }
  }
}
