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
 * @param surest the last pour that is ready; the first where none is
 * @param film the film of that pour
 * @param readyS when the thick spot of that pour is ready (s)
 * @param body whether the paste holds its granules and levels, by its concentration
 * @param levelling between which thicknesses it levels by itself and stays on the plate
 */
public record ThicknessAnswer(
    ThicknessRequest request,
    List<PourThickness> pours,
    PourThickness surest,
    FilmForecast film,
    Band readyS,
    PasteBody body,
    Levelling levelling) {}
