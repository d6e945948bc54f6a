package starchfilm.casting.trial;

import java.util.OptionalDouble;

/**
 * One strip pulled until it broke.
 *
 * @param loadN load at break (N)
 * @param widthM width of the strip (m)
 * @param thicknessM thickness of the strip (m)
 * @param stretchAtBreak stretch at break over the length between the clips (ratio), if measured
 */
public record PullTest(
    double loadN, double widthM, double thicknessM, OptionalDouble stretchAtBreak) {}
