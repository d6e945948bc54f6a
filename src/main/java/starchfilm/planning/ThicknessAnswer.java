package starchfilm.planning;

import java.util.List;
import starchfilm.film.FilmForecast;
import starchfilm.film.PasteBody;
import starchfilm.numerics.evidence.Band;

/**
 * The thicknesses a paste may be poured at for a date.
 *
 * @param request what was asked
 * @param pours one a share of the likely cases, in the order asked
 * @param film the film of the first pour
 * @param readyS when the thick spot of the last pour is ready (s)
 * @param body whether the paste holds its granules and levels, by its concentration
 * @param levelling between which thicknesses it levels by itself and stays on the plate
 */
public record ThicknessAnswer(
    ThicknessRequest request,
    List<PourThickness> pours,
    FilmForecast film,
    Band readyS,
    PasteBody body,
    Levelling levelling) {}
