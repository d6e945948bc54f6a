package starchfilm.drying;

/**
 * What may go wrong with one plate while it dries.
 *
 * @param crack cracking
 * @param mould mould
 */
public record PlateRisks(CrackRisk crack, MouldRisk mould) {}
