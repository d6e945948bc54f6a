package starchfilm.advice;

import java.util.DoubleSummaryStatistics;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.util.CombinatoricsUtils;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;

/**
 * What the faults of a notebook teach together: below which glycerol its films broke and above
 * which they stuck, above which thickness its plates stayed wet.
 *
 * <p>Only what was seen is stated, with its counts, and only where as clear a parting would come by
 * chance less than once in ten: of n plates on one side and m on the other, all f faulty ones on
 * the first side, {@code C(n, f)/C(n + m, f)} (Fisher 1935, The Design of Experiments, exact test,
 * recalled). No model is asked. Limit: trials differ in more than one thing, so a limit seen here
 * may belong to another difference.
 */
final class Taught {
  private static final Set<FaultKind> OF_LITTLE_GLYCEROL =
      EnumSet.of(FaultKind.CRACKED, FaultKind.BRITTLE, FaultKind.BROKE_APART);
  private static final Set<FaultKind> OF_MUCH_GLYCEROL = EnumSet.of(FaultKind.STICKY);
  private static final Set<FaultKind> OF_THICKNESS =
      EnumSet.of(FaultKind.STILL_WET, FaultKind.MOULD);

  /** Fewer faulty trials are no lesson. */
  private static final int FEWEST = 2;

  private static final double CHANCE = 0.1;

  private final List<TrialForecast> poured;
  private final ToDoubleFunction<TrialForecast> figure;
  private final String ofWhat;

  private Taught(
      List<TrialForecast> poured, ToDoubleFunction<TrialForecast> figure, String ofWhat) {
    this.poured = poured;
    // As it is written, or a trial just past the limit would stand at it in the reader's table.
    this.figure = each -> Double.parseDouble(Figures.brief(figure.applyAsDouble(each)));
    this.ofWhat = ofWhat;
  }

  static List<String> by(List<TrialForecast> forecasts) {
    List<TrialForecast> poured =
        forecasts.stream().filter(each -> each.trial().hasHistory()).toList();
    Taught glycerol =
        new Taught(
            poured,
            each -> 100 * each.composition().glycerolPerDryStarch(),
            " g or %s of glycerol per 100 g dry starch");
    Taught thickness =
        new Taught(
            poured,
            each -> 1e3 * each.trial().casting().pour().wetThicknessM().value(),
            " mm or %s of paste");
    return Stream.of(
            glycerol.sentence(OF_LITTLE_GLYCEROL, "cracked, broke apart or were brittle", true),
            glycerol.sentence(OF_MUCH_GLYCEROL, "were sticky", false),
            thickness.sentence(OF_THICKNESS, "stayed wet or moulded", false))
        .flatMap(Optional::stream)
        .toList();
  }

  /** With the worst figure or beyond it, and short of it: where no plate was at fault. */
  private Optional<String> sentence(Set<FaultKind> faults, String what, boolean atLittle) {
    DoubleSummaryStatistics faultyAt =
        poured.stream().filter(each -> shows(each, faults)).mapToDouble(figure).summaryStatistics();
    double worst = atLittle ? faultyAt.getMax() : faultyAt.getMin();
    String beyond = atLittle ? "less" : "more";
    DoublePredicate isBeyond = figure -> atLittle ? figure <= worst : figure >= worst;
    int faulty = (int) faultyAt.getCount();
    int there = (int) poured.stream().mapToDouble(figure).filter(isBeyond).count();
    double byChance =
        CombinatoricsUtils.binomialCoefficientDouble(there, faulty)
            / CombinatoricsUtils.binomialCoefficientDouble(poured.size(), faulty);
    return faulty < FEWEST || byChance > CHANCE
        ? Optional.empty()
        : Optional.of(
            "Of the %s trials with %s%s, %s %s; of the other %s none."
                .formatted(
                    there,
                    Figures.brief(worst),
                    ofWhat.formatted(beyond),
                    faulty,
                    what,
                    poured.size() - there));
  }

  private static boolean shows(TrialForecast each, Set<FaultKind> faults) {
    return each.trial().seen().faults().stream()
        .map(ObservedFault::kind)
        .anyMatch(faults::contains);
  }
}
