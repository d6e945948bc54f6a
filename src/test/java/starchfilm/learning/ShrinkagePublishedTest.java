package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * Learning from films of one kind against a worked example: two physicists who differ about a
 * constant beforehand, and measure it. Source: Box and Tiao 1973, Bayesian Inference in Statistical
 * Analysis, section 1.2.3 (recalled, figures as printed there: N(900, 20²) and N(800, 80²) before;
 * N(890, 17.9²) and N(840, 35.7²) after one reading of 850 ± 40; N(871.2, 3.9²) and N(869.8,
 * 3.995²) after a hundred with mean 870).
 *
 * <p>Counted from what each held before and in units of how sure, the example is ours: the common
 * part and the kind's are what was held before, and a film's own part adds to the doubt of its
 * strips. Agreement is that of the printed figures; 35.7 is cut off from 35.78 in the book.
 */
class ShrinkagePublishedTest {
  private static final Map<StarchKind, Double> POTATO = Map.of(StarchKind.POTATO, 1.0);

  @ParameterizedTest
  @CsvSource({
    // before, sd before, readings, their mean, sd of one, after, within, sd after, within
    "900, 20,   1, 850, 40, 890,   0.5,  17.9,  0.05",
    "800, 80,   1, 850, 40, 840,   0.5,  35.7,  0.1",
    "900, 20, 100, 870, 40, 871.2, 0.05, 3.9,   0.05",
    "800, 80, 100, 870, 40, 869.8, 0.05, 3.995, 0.0006"
  })
  void twoPhysicists(
      double before,
      double sdBefore,
      int readings,
      double mean,
      double sdOfOne,
      double after,
      double afterWithin,
      double sdAfter,
      double sdAfterWithin) {
    double logScatter = new FilmForecaster().logScatter(FilmProperty.TENSILE_STRENGTH);
    // The shares of common part and kind, and of the film alone.
    double unit = Math.sqrt(0.6 + 0.2) * logScatter / sdBefore;
    double filmVariance = 0.2 * logScatter * logScatter;
    // So many films that each is less sure than its own part alone would make it.
    double together = Math.pow(sdOfOne * unit, 2) / readings;
    int films = Math.max(1, (int) Math.ceil(filmVariance / together - 1e-9));
    double sd = Math.sqrt(Math.max(0, films * together - filmVariance));
    StripLikelihood film =
        new StripLikelihood(
            "film.json",
            POTATO,
            FilmProperty.TENSILE_STRENGTH,
            1,
            new Estimate((mean - before) * unit, sd));

    Estimate learnt =
        SharedStrips.after(FilmProperty.TENSILE_STRENGTH, Collections.nCopies(films, film))
            .shared(POTATO);

    assertThat(before + learnt.value() / unit).isCloseTo(after, within(afterWithin));
    assertThat(learnt.sd() / unit).isCloseTo(sdAfter, within(sdAfterWithin));
    assertThat(
            SharedStrips.after(FilmProperty.TENSILE_STRENGTH, List.of()).shared(POTATO).sd() / unit)
        .isCloseTo(sdBefore, within(1e-9));
  }
}
