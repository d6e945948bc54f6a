package starchfilm.request;

import static starchfilm.files.amount.Dimension.LENGTH;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.Workshop;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.planning.ThicknessFinder;
import starchfilm.planning.ThicknessRequest;

/**
 * The question of how thick a paste may be poured to be dry by a date.
 *
 * @param trial the trial; how thick it is poured is not used
 * @param request what is asked of its casting
 * @param by the date, by the clock on the wall
 * @param assumptions what was taken for granted, a sentence each
 */
public record ThicknessQuestion(
    Trial trial, ThicknessRequest request, String by, List<String> assumptions) {

  private static final List<Double> SHARES = List.of(0.5, 0.9);

  /**
   * Reads what was written.
   *
   * @param entries what was written
   * @param base what it is put over, if a file was named
   * @param folder where a room log lies
   * @param clock the clock on the wall: the pour is now
   * @return the question
   * @throws RefusedRequestException where it cannot be meant
   */
  public static ThicknessQuestion read(
      Entries entries, Optional<TrialQuestion.Base> base, Path folder, Clock clock) {
    EntryReader in = NewTrial.withLine(entries, clock);
    in.require("thickness.by", "when it must be dry, such as 5d");
    double byS =
        in.one("thickness.by", typed -> WrittenDate.secondsFromNow(in, typed, clock), Double.NaN);
    Stream.of("trial.wet", "trial.poured-mass")
        .filter(in::has)
        .forEach(
            key -> in.remark(in.quoted(key) + " is not used: how thick to pour is what is asked."));
    Optional<Trial> trial =
        TrialQuestion.read(in, base, folder, clock).map(TrialQuestion.Base::trial);
    trial.stream()
        .flatMap(read -> read.notRecorded().stream())
        .filter(gap -> !gap.field().equals("pour.wet_thickness_mm"))
        .forEach(gap -> in.assume(gap.words()));
    return in.finished(
        () -> {
          Casting casting = trial.orElseThrow().casting();
          return new ThicknessQuestion(
              trial.get(),
              of(casting, byS, in.one("trial.rim", LENGTH::si)),
              WrittenDate.shown(byS, clock),
              in.assumptions());
        });
  }

  /** A casting counts the rim above its paste; here it counts from the plate. */
  private static ThicknessRequest of(Casting casting, double byS, Optional<Double> rimM) {
    double above = casting.plate().rimHeightM();
    double whole = above == 0 ? 0 : above + casting.wetThicknessM();
    return new ThicknessRequest(casting, rimM.orElse(whole), byS);
  }

  /**
   * Finds the thickness.
   *
   * @param workshop what earlier trials taught
   * @return how thick in half and in 9 of 10 likely cases
   * @throws RefusedRequestException where the model cannot hold what was asked
   */
  public ThicknessAnswer answer(Workshop workshop) {
    Casting casting = trial.casting();
    ThicknessFinder finder =
        new ThicknessFinder(
            workshop.factors(
                casting.place().learntRoom(), casting.composition().starchShares(), false));
    return RefusedRequestException.orRefused(() -> finder.find(request, SHARES));
  }
}
