package starchfilm.planning;

import starchfilm.drying.uncertainty.ParameterDistribution;

/**
 * The scatter of plates that are meant to be the same.
 *
 * @param drying each plate's own part of what is uncertain of its drying
 * @param strengthLogSd of the logarithm of tensile strength, as a plate's strips show it
 * @param stretchLogSd of the logarithm of stretch at break, likewise
 */
public record PlateScatter(
    ParameterDistribution drying, double strengthLogSd, double stretchLogSd) {}
