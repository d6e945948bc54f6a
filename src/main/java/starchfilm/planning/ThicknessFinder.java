package starchfilm.planning;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.film.FilmForecaster;
import starchfilm.film.PasteBody;
import starchfilm.planning.PourThickness.DateReach;

/**
 * Turns the drying forecast round: from a date to the wet thickness that meets it.
 *
 * <p>Safe to share.
 *
 * @param factors what is known of the factors of a drying forecast
 */
public record ThicknessFinder(ParameterDistribution factors) {
  private static final FilmForecaster FILM = new FilmForecaster();

  /**
   * Finds how thick the paste may be poured.
   *
   * @param request paste, plate, room and date
   * @param shares how sure the date must be, by which shares of the likely cases, each above 0 and
   *     below 1; at least one
   * @return one pour a share
   */
  public ThicknessAnswer find(ThicknessRequest request, List<Double> shares) {
    ThicknessRoot root =
        new ThicknessRoot(new DryingForecaster(factors, DryingForecaster.DRAWS), request::pouredTo);
    List<PourThickness> pours =
        shares.stream()
            .map(sure -> pour(request, sure, root.thickest(request.byS(), sure)))
            .toList();
    PourThickness surest =
        pours.stream()
            .filter(pour -> pour.reach() != DateReach.TOO_SOON)
            .reduce(pours.get(0), (less, more) -> more);
    return new ThicknessAnswer(
        request,
        pours,
        surest,
        FILM.forecast(request.pouredTo(surest.wetThicknessM())),
        Quantiles.band(root.ready(surest.wetThicknessM())),
        PasteBody.of(request.casting().composition()),
        Levelling.of(request.casting().composition()));
  }

  private static PourThickness pour(ThicknessRequest request, double sure, OptionalDouble found) {
    double wetM = found.orElse(ThicknessRoot.THINNEST_M);
    DateReach reach =
        found.isEmpty()
            ? DateReach.TOO_SOON
            : wetM >= ThicknessRoot.THICKEST_M ? DateReach.ANY : DateReach.FOUND;
    return new PourThickness(
        sure,
        reach,
        wetM,
        request.pouredTo(wetM).pastePerPlateKg(),
        FILM.forecast(request.pouredTo(wetM)).dryThicknessM());
  }
}
