package starchfilm.planning;

/**
 * The yield of a recipe in the figures that plans are compared by, before it is rounded to the
 * balance.
 *
 * @param plates plates poured
 * @param plasticiser kg glycerol per kg dry starch
 * @param dryThicknessM dry thickness, averaged over the plate (m)
 * @param filmKg film from all plates, at rest with the air of use (kg)
 * @param readyS when the thick spot is ready, in the middle of the likely cases (s)
 * @param surelyReadyS by when it is ready as surely as asked (s); infinite where it never is
 * @param chance share of the likely cases in which it is ready by the date; 1 without a date
 * @param wishChance how likely the film is as asked, 0 to 1
 * @param glycerolKg what the jar gives, of its own content (kg)
 * @param starchKg dry starch used (kg)
 * @param potM3 what a pot must hold, brim-full, for one plate (m3)
 */
public record RecipeOutcome(
    int plates,
    double plasticiser,
    double dryThicknessM,
    double filmKg,
    double readyS,
    double surelyReadyS,
    double chance,
    double wishChance,
    double glycerolKg,
    double starchKg,
    double potM3) {}
