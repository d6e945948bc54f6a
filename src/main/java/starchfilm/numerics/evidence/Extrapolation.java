package starchfilm.numerics.evidence;

/**
 * A rule was used outside the range it is known to hold for.
 *
 * @param rule what the rule gives, in the trade's words, such as "tensile strength"
 * @param range the range it holds for
 * @param given the value it was used at, in the range's unit
 */
public record Extrapolation(String rule, ValidRange range, double given) {}
