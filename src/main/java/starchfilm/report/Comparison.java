package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.Stream;
import starchfilm.advice.Adviser;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.drying.DryingSources;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.film.risk.PlateRisks;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Workshop;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Source;
import starchfilm.report.advice.Advised;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.learnt.LearntSoFar;

/**
 * The trials of a comparison page with everything found out about them.
 *
 * @param analyses the trials in the order they are shown, each with its forecast
 * @param troubles whole sentences on files that could not be read and trials that could not be
 *     forecast
 * @param remarks whole sentences on what is doubtful in the data, such as gaps in a room log
 * @param advised what the notebook advises
 * @param learnt what the trials have taught, folder by folder
 */
public record Comparison(
    List<TrialAnalysis> analyses,
    List<String> troubles,
    List<String> remarks,
    Advised advised,
    List<LearntSoFar> learnt) {
  /**
   * A comparison without advice.
   *
   * @param analyses the trials
   * @param troubles on files and trials that are not shown
   * @param remarks on what is doubtful in the data
   */
  public Comparison(List<TrialAnalysis> analyses, List<String> troubles, List<String> remarks) {
    this(analyses, troubles, remarks, Advised.NOTHING, List.of());
  }

  /** The forecasts of the trials, in their order. */
  public List<TrialForecast> trials() {
    return analyses.stream().map(TrialAnalysis::forecast).toList();
  }

  /** The trials side by side, for other programs. */
  public AnswerTable table() {
    return TrialRows.of(this);
  }

  /**
   * The number of a trial.
   *
   * @param trial one of the trials
   * @return its place, from 1
   */
  public int numberOf(Trial trial) {
    return 1 + trials().stream().map(one -> one.trial().file()).toList().indexOf(trial.file());
  }

  /**
   * The same with what was learnt from its trials.
   *
   * @param workshops what was learnt where they lie
   * @return the comparison with what that is, and how much nearer it brought the forecasts
   */
  public Comparison taughtBy(List<Workshop> workshops) {
    List<TrialForecast> trials = trials();
    return new Comparison(
        analyses,
        troubles,
        remarks,
        advised,
        LearntSoFar.from(
            workshops,
            trials,
            trials.subList(ComparisonPage.firstApart(trials.size()), trials.size())));
  }

  /**
   * The same with what the notebook advises and with what was learnt, worked out side by side.
   *
   * @param adviser what advises
   * @param workshops what was learnt where the trials lie
   * @return the comparison with both
   */
  public Comparison with(Adviser adviser, List<Workshop> workshops) {
    ForkJoinTask<Comparison> taught = ForkJoinPool.commonPool().submit(() -> taughtBy(workshops));
    Advised advisedOn = Advised.by(adviser, trials());
    return new Comparison(analyses, troubles, remarks, advisedOn, taught.join().learnt());
  }

  /** The publications its figures rest on, each once, in the order they are first used. */
  public List<Source> sources() {
    Stream<Source> ofForecasts =
        trials().stream()
            .flatMap(
                trial ->
                    Stream.of(
                        trial.film().sources(),
                        List.of(StarchKind.SOURCE),
                        DryingSources.all(),
                        PlateRisks.SOURCES))
            .flatMap(List::stream);
    Stream<Source> ofAdvice =
        new TreeMap<>(advised.after())
            .values().stream()
                .flatMap(advice -> advice.advice().diagnoses().stream())
                .flatMap(diagnosis -> diagnosis.suspicions().stream())
                .map(suspicion -> suspicion.rule().source());
    return Source.once(Stream.concat(ofForecasts, ofAdvice));
  }

  /**
   * Everything that came of a notebook.
   *
   * @param notebook the trials that were read, and what was wrong with the rest
   * @param forecasts the forecasts of its trials
   * @return the comparison
   */
  public static Comparison of(Notebook notebook, TrialForecasts forecasts) {
    List<String> troubles = new ArrayList<>();
    troubles.addAll(FirstFaults.sentences(notebook.faults()));
    troubles.addAll(forecasts.failures());
    List<String> remarks = notebook.notices().stream().map(Notice::sentence).toList();
    return new Comparison(forecasts.done(), troubles, remarks);
  }
}
