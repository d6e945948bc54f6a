package starchfilm.change;

/**
 * One change of a casting and what the model, rerun with it, makes of a risk.
 *
 * @param change what is changed
 * @param from its figure now, in the SI unit of its setting
 * @param to its figure then
 * @param riskBefore the risk's figure now, in its own measure
 * @param riskAfter the risk's figure then
 */
public record Remedy(Change change, double from, double to, double riskBefore, double riskAfter) {}
