package starchfilm.advice;

import java.util.Locale;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;
import starchfilm.film.PlasticiserWindow;
import starchfilm.plate.Spot;
import starchfilm.risk.CrackRisk;
import starchfilm.risk.PlateRisks;

/**
 * What the model says of a kind of trouble: a figure above 0 that grows with it.
 *
 * <p>The trouble of a figure m is {@code u = ln(m/harmless)/ln(clear/harmless)}: 0 where the figure
 * is harmless, 1 where the trouble is likely. The limits of cracking and mould are those between
 * the levels of {@link starchfilm.risk.RiskLevel}; all others are judged, no source.
 */
public enum Measure {
  /** What the skin must stretch over what it can; limits from low to likely. */
  CRACK_STRAIN(0.3, 1) {
    @Override
    double figure(Scene scene) {
      return scene.outlook().crackRatio();
    }

    @Override
    String words(Scene scene) {
      CrackRisk crack = scene.outlook().risks().crack();
      if (figure(scene) == 0) {
        return "no part of the film is firm long before the rest";
      }
      return "the skin must stretch by "
          + Told.percent(crack.stretchNeeded())
          + " and can by "
          + Told.percent(crack.stretchAvailable())
          + " at the worst moment, "
          + Told.span(crack.worstAtS())
          + " after the pour";
    }

    @Override
    String moved(double before, double after) {
      return "the skin must stretch "
          + Told.number(after)
          + " instead of "
          + Told.number(before)
          + " times what it can";
    }
  },

  /** Time to dry through over the time the plate was given; harmless where 9 in 10 are dry. */
  NOT_DRY(0.68, 1) {
    @Override
    double figure(Scene scene) {
      return late(scene, Milestone.DRY_THROUGH);
    }

    @Override
    boolean needsTime() {
      return true;
    }

    @Override
    String words(Scene scene) {
      return lateWords(scene, Milestone.DRY_THROUGH, "dry through");
    }

    @Override
    String moved(double before, double after) {
      return times("drying through", before, after);
    }
  },

  /** Time until peelable over the time the plate was given; harmless where 9 in 10 are. */
  NOT_PEELABLE(0.68, 1) {
    @Override
    double figure(Scene scene) {
      return late(scene, Milestone.PEELABLE);
    }

    @Override
    boolean needsTime() {
      return true;
    }

    @Override
    String words(Scene scene) {
      return lateWords(scene, Milestone.PEELABLE, "peelable");
    }

    @Override
    String moved(double before, double after) {
      return times("getting firm enough to peel", before, after);
    }
  },

  /** Hours at full growing speed of mould; limits from watch to likely. */
  MOULD_HOURS(24, 48) {
    @Override
    double figure(Scene scene) {
      return scene.outlook().risks().mould().weightedHours();
    }

    @Override
    String words(Scene scene) {
      PlateRisks risks = scene.outlook().risks();
      String shows =
          Double.isInfinite(risks.mould().growthFromS())
              ? ""
              : "; growth may show from " + Told.span(risks.mould().growthFromS()) + " on";
      return "the plate stays wet for "
          + Told.number(figure(scene))
          + " hours of full mould growth, 48 are enough"
          + shows;
    }

    @Override
    String moved(double before, double after) {
      return "it stays wet for "
          + Told.number(after)
          + " instead of "
          + Told.number(before)
          + " hours of full mould growth";
    }
  },

  /** A stretch at break of 10 %, where film snaps, over the film's own in the drier air. */
  SNAPPING(0.5, 1) {
    @Override
    double figure(Scene scene) {
      return SNAPS_AT / stretch(scene);
    }

    @Override
    String words(Scene scene) {
      return "at rest in "
          + Told.percent(scene.driestHumidity())
          + " humidity the film stretches by "
          + Told.percent(stretch(scene))
          + " before it breaks, and snaps below 10 %";
    }

    @Override
    String moved(double before, double after) {
      return "the film stretches by "
          + Told.percent(SNAPS_AT / after)
          + " instead of "
          + Told.percent(SNAPS_AT / before);
    }
  },

  /** Glycerol over the level above which film is tacky in the damper air. */
  TACK(0.85, 1) {
    @Override
    double figure(Scene scene) {
      return Math.max(1e-3, glycerol(scene))
          / PlasticiserWindow.tackyAbove(scene.dampestHumidity());
    }

    @Override
    String words(Scene scene) {
      return "in "
          + Told.percent(scene.dampestHumidity())
          + " humidity film is tacky above "
          + Told.level(PlasticiserWindow.tackyAbove(scene.dampestHumidity()))
          + " glycerol to 100 g dry starch, and this has "
          + Told.level(glycerol(scene));
    }

    @Override
    String moved(double before, double after) {
      return "there is "
          + Told.number(after)
          + " instead of "
          + Told.number(before)
          + " times the glycerol at which film turns tacky";
    }
  },

  /** A load of 1 N on a strip 1 cm wide over what the thin edge bears. */
  TEARING(0.2, 1) {
    @Override
    double figure(Scene scene) {
      return TEARS_AT_N_PER_M / load(scene);
    }

    @Override
    String words(Scene scene) {
      return "a strip 1 cm wide of the thin edge bears " + Told.number(load(scene) / 100) + " N";
    }

    @Override
    String moved(double before, double after) {
      return "a strip 1 cm wide of the thin edge bears "
          + Told.number(1 / after)
          + " instead of "
          + Told.number(1 / before)
          + " N";
    }
  },

  /** Share of the drying time for which the thin edge is dry and the thick spot is not. */
  EDGE_AHEAD(0.2, 0.5) {
    @Override
    double figure(Scene scene) {
      double edge = scene.outlook().timeS(Spot.THIN_EDGE, Milestone.DRY_THROUGH);
      double thick = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
      return Math.max(1e-3, 1 - edge / thick);
    }

    @Override
    String words(Scene scene) {
      return "the thin edge is dry "
          + Told.span(scene.outlook().timeS(Spot.THIN_EDGE, Milestone.DRY_THROUGH))
          + " after the pour and the thick spot only after "
          + Told.span(scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH));
    }

    @Override
    String moved(double before, double after) {
      return "the edge is ahead of the middle for "
          + Told.percent(after)
          + " instead of "
          + Told.percent(before)
          + " of the drying time";
    }
  },

  /** The cause's own figure against its own limits; the model computes no such trouble. */
  OWN_FIGURE(1, Math.E) {
    @Override
    double figure(Scene scene) {
      throw new IllegalStateException("only a cause knows its own figure");
    }

    @Override
    String words(Scene scene) {
      return "the model computes no such trouble";
    }

    @Override
    String moved(double before, double after) {
      throw new IllegalStateException("only a cause knows its own figure");
    }
  };

  private static final double SNAPS_AT = 0.10;
  private static final double TEARS_AT_N_PER_M = 100;

  private final double harmless;
  private final double clear;

  Measure(double harmless, double clear) {
    this.harmless = harmless;
    this.clear = clear;
  }

  /** The figure, above 0. */
  abstract double figure(Scene scene);

  /** The figure in a sentence, a clause. */
  abstract String words(Scene scene);

  /** What a change does to the figure, a clause. */
  abstract String moved(double before, double after);

  /** Whether it can be told only where it is known when the plate was looked at. */
  boolean needsTime() {
    return false;
  }

  /**
   * The name of the measure in the table of rules.
   *
   * @return lower case, such as "crack strain"
   */
  public String tableName() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The trouble of a figure: 0 harmless, 1 likely, linear in its logarithm. */
  double trouble(double figure) {
    return Math.max(0, Math.log(figure / harmless) / Math.log(clear / harmless));
  }

  double trouble(Scene scene) {
    return trouble(figure(scene));
  }

  private static double glycerol(Scene scene) {
    return scene.setup().composition().glycerolPerDryStarch();
  }

  private static double stretch(Scene scene) {
    return scene
        .outlook()
        .stretchAtRest(scene.driestHumidity(), scene.setup().use().temperatureK());
  }

  private static double load(Scene scene) {
    FilmForecast film = scene.outlook().film();
    double edge = film.dryThicknessM().middle() * (1 - scene.setup().casting().pour().unevenness());
    return film.tensileStrengthPa().middle() * edge;
  }

  private static double late(Scene scene, Milestone milestone) {
    return scene.outlook().timeS(scene.spot(), milestone) / scene.seenAtS().orElseThrow();
  }

  private static String lateWords(Scene scene, Milestone milestone, String what) {
    double seen = scene.seenAtS().orElseThrow();
    String when = scene.fault().seenAtS().isPresent() ? "at that time" : "when last weighed";
    return "the "
        + scene.spotName()
        + " had "
        + Told.chance(Chance.by(scene.forecast().at(scene.spot()).at(milestone), seen))
        + " probability of being "
        + what
        + " "
        + when
        + ", "
        + Told.span(seen)
        + " after the pour";
  }

  private static String times(String what, double before, double after) {
    return what
        + " takes "
        + Told.number(after)
        + " instead of "
        + Told.number(before)
        + " times the time it was given";
  }
}
