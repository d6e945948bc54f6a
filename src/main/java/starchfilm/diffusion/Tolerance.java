package starchfilm.diffusion;

/**
 * How far one step may be off.
 *
 * @param relative share of a node's value, above 0
 * @param node what is allowed at a node besides, in the unknown's unit, above 0
 * @param border what is allowed in the lumped state, in its unit, above 0
 */
public record Tolerance(double relative, double node, double border) {}
