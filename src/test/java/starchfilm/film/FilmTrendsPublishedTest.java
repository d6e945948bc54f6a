package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.Castings;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/**
 * Which way the figures of a film go, as printed, with its ageing: damper air, warmth and glycerol
 * make it softer, weaker and stretchier.
 *
 * <p>Sources: Saberi et al. 2016, Starch-Staerke 68, pea starch (softer and stretchier in damper
 * air; abstract read); Mehyar and Han 2004, J. Food Sci. 69:E449, rice and pea starch (the same;
 * abstract read); Farahnaky, Saberi and Majzoobi 2013, J. Texture Stud. 44:176, wheat starch, 0 to
 * 50 g glycerol, 11 to 84 % relative humidity (stress at break and modulus fall, elongation rises
 * with glycerol and with humidity; abstract read, authors recalled). Limits: glassy starch 1 to 3
 * GPa (recalled), wet rubber under 30 MPa.
 */
class FilmTrendsPublishedTest {
  private static final double DAY_S = 86_400;
  private static final double ROUNDING = 1e-9;

  private final FilmForecaster forecaster = new FilmForecaster();

  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void damperAirSoftensAndStretches(StarchKind kind) {
    for (double glycerol = 0; glycerol <= 60; glycerol += 5) {
      for (double celsius : new double[] {5, 20, 40, 60}) {
        for (double days : new double[] {0, 7, 30, 365}) {
          List<FilmForecast> sweep = new ArrayList<>();
          for (double humidity = 0.10; humidity <= 0.901; humidity += 0.02) {
            sweep.add(film(kind, glycerol, humidity, celsius, days));
          }
          softer(sweep, kind + " " + glycerol + " g " + celsius + " °C " + days + " d");
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void warmthSoftensAndStretches(StarchKind kind) {
    for (double glycerol = 0; glycerol <= 60; glycerol += 10) {
      for (double humidity : new double[] {0.1, 0.35, 0.5, 0.75, 0.9}) {
        for (double days : new double[] {0, 30, 365}) {
          List<FilmForecast> sweep = new ArrayList<>();
          for (double celsius = 5; celsius <= 60; celsius += 1) {
            sweep.add(film(kind, glycerol, humidity, celsius, days));
          }
          softer(sweep, kind + " " + glycerol + " g " + humidity + " " + days + " d");
        }
      }
    }
  }

  /** Below about 50 % humidity a little glycerol dries a film, so the sweep is in its own air. */
  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void glycerolSoftensAndStretches(StarchKind kind) {
    for (double humidity : new double[] {0.11, 0.35, 0.5, 0.65, 0.84, 0.9}) {
      for (double days : new double[] {0, 30, 365}) {
        List<FilmForecast> sweep = new ArrayList<>();
        for (double glycerol = 0; glycerol <= 60; glycerol += 1) {
          sweep.add(film(kind, glycerol, humidity, 23, days));
        }
        softer(sweep, kind + " " + humidity + " " + days + " d");
      }
    }
  }

  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void glassAndRubberEndWhereStarchDoes(StarchKind kind) {
    double glass = film(kind, 0, 0.3, 20, 0).youngsModulusPa().middle();
    double rubber = film(kind, 50, 0.9, 23, 0).youngsModulusPa().middle();

    assertThat(glass).isBetween(1e9, 3e9);
    assertThat(rubber).isLessThan(30e6);
  }

  private static void softer(List<FilmForecast> sweep, String where) {
    rising(sweep, film -> -film.youngsModulusPa().middle(), where + ", stiffness");
    rising(sweep, film -> -film.tensileStrengthPa().middle(), where + ", strength");
    rising(sweep, film -> film.elongationAtBreak().middle(), where + ", stretch");
  }

  private static void rising(
      List<FilmForecast> sweep, ToDoubleFunction<FilmForecast> figure, String where) {
    for (int i = 1; i < sweep.size(); i++) {
      double before = figure.applyAsDouble(sweep.get(i - 1));
      double after = figure.applyAsDouble(sweep.get(i));
      assertThat(after)
          .as("%s, step %s", where, i)
          .isGreaterThanOrEqualTo(before - ROUNDING * Math.abs(before));
    }
  }

  private FilmForecast film(
      StarchKind kind, double glycerol, double humidity, double celsius, double days) {
    Composition paste = Castings.paste(kind, 0.04, glycerol / 100);
    return forecaster.forecast(
        Castings.film(paste)
            .with(Castings.cook(15, 130))
            .with(new Use(humidity, celsius + ZERO_CELSIUS_K, days * DAY_S)));
  }
}
