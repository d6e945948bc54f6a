package starchfilm.learning.summary;

import starchfilm.film.FilmProperty;
import starchfilm.numerics.evidence.Estimate;

/**
 * Figures learnt from pull tests of one property of the films of one starch kind.
 *
 * @param property tensile strength or elongation at break
 * @param starch the kind's trade name, or empty for any
 * @param strips strips pulled, of films that hold that starch
 * @param logFactor natural logarithm of measured over forecast for home film, with its standard
 *     uncertainty for a next film's mean left out
 * @param logSdBefore the same uncertainty before any strip
 */
public record FilmLearnt(
    FilmProperty property, String starch, int strips, Estimate logFactor, double logSdBefore) {}
