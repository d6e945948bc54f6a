package starchfilm.report.today;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.summary.Learnt;
import starchfilm.report.DryingFigure;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.chart.SectionFigure;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RoomWords;
import starchfilm.report.words.Spans;
import starchfilm.today.Standing;

/**
 * One trial as it stands now: a part for each of its plates that somebody distinguished.
 *
 * @param parts the plates; of a trial that is not drying, its curve alone
 * @param spread how far its plates lie apart; empty for one
 * @param ended what became of its plates; empty where that is not noted, or one still dries
 */
public record TrialNow(List<Part> parts, String spread, String ended) {
  /** What became of more plates is stated where each was noted. */
  private static final int MOST_ENDS = 6;

  /**
   * A plate.
   *
   * @param plates which of the pour; empty for all
   * @param drying true while it dries
   * @param told what is said of it while it dries
   * @param figure its curve
   * @param readOuts what the curve says, at even steps along its axis
   * @param cut the plate cut open now, while it dries
   * @param course the plate cut open along time; empty unless it dries
   */
  public record Part(
      String plates,
      boolean drying,
      Optional<PlateWords> told,
      CurveFigure figure,
      List<String> readOuts,
      Optional<SectionFigure> cut,
      List<SectionFigure> course) {
    /** What is said of a plate that dries. */
    public PlateWords words() {
      return told.orElseThrow();
    }

    /** A plate that dries, cut open. */
    public SectionFigure section() {
      return cut.orElseThrow();
    }

    private static Part of(Standing standing) {
      PlateCard card = PlateCard.of(standing);
      return new Part(
          card.words().plates(),
          true,
          Optional.of(card.words()),
          card.figure(),
          DryingFigure.readOuts(
              standing.forecast(), OptionalDouble.of(standing.nowS()), standing.emptyKg()),
          Optional.of(card.section()),
          PlateCard.alongTime(standing));
    }

    private static Part of(TrialForecast forecast) {
      return new Part(
          "",
          false,
          Optional.empty(),
          DryingFigure.of(forecast, OptionalDouble.empty()),
          DryingFigure.readOuts(forecast, OptionalDouble.empty(), OptionalDouble.empty()),
          Optional.empty(),
          List.of());
    }
  }

  /**
   * A trial now.
   *
   * @param forecast its forecast
   * @param standings its plates that are drying; empty where none is
   * @return the view
   */
  public static TrialNow of(TrialForecast forecast, List<Standing> standings) {
    return new TrialNow(
        standings.isEmpty()
            ? List.of(Part.of(forecast))
            : standings.stream().map(Part::of).toList(),
        spread(standings),
        standings.isEmpty() ? ended(forecast.trial()) : "");
  }

  private static String ended(Trial trial) {
    PourCalendar calendar = PourCalendar.of(trial);
    List<String> sentences = new ArrayList<>();
    trial
        .seen()
        .eachPlate()
        .ends()
        .forEach(
            (plate, end) ->
                sentences.add(
                    (trial.plates() == 1 ? "" : "Plate " + plate + ": ")
                        + end.givenUp().map(why -> "Given up, " + why).orElse("Off the plate")
                        + (end.atS().isPresent()
                            ? ", " + calendar.moment(end.atS().getAsDouble())
                            : "")
                        + "."));
    return sentences.size() > MOST_ENDS ? "" : String.join(" ", sentences);
  }

  /** Mean and spread of the plates that somebody distinguished. */
  private static String spread(List<Standing> standings) {
    double[] readyS =
        standings.stream()
            .mapToDouble(standing -> standing.readyS().middle())
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    if (readyS.length < 2) {
      return "";
    }
    double mean = Arrays.stream(readyS).average().orElseThrow();
    return "Its plates are dry through after "
        + Spans.of(mean)
        + " in the mean, and "
        + Spans.of(readyS[readyS.length - 1] - readyS[0])
        + " apart.";
  }

  /**
   * Where a trial dries.
   *
   * @param trial the trial
   * @return its room and the air there
   */
  public static String room(Trial trial) {
    var place = trial.casting().place();
    String air =
        String.join(
            " · ",
            RoomWords.temperature(place.room()),
            RoomWords.humidity(place.room()),
            "air at " + RoomWords.speed(place.room()));
    return place.name().isBlank() ? air : place.name() + " · " + air;
  }

  /**
   * What its plan was asked for.
   *
   * @param trial the trial
   * @return a sentence; empty where nobody asked for anything
   */
  public static String wanted(Trial trial) {
    List<String> words = new ArrayList<>();
    trial.wanted().film().ifPresent(words::add);
    trial.wanted().byS().ifPresent(byS -> words.add("ready " + Spans.of(byS) + " after the pour"));
    return words.isEmpty() ? "" : "Planned as: " + String.join("; ", words) + ".";
  }

  /**
   * Whether what was learnt is in use.
   *
   * @param trial the trial
   * @param learnt what its folder has taught
   * @return a clause
   */
  public static String learnt(Trial trial, Learnt learnt) {
    Stream<String> rooms =
        learnt.rooms().stream()
            .filter(room -> room.isCalled(trial.casting().place().name()))
            .map(room -> "corrected by what was learnt: " + room.sentence());
    return rooms
        .findFirst()
        .orElse(
            learnt.rooms().isEmpty()
                ? "from textbook rates alone; nothing has been learnt yet"
                : "corrected by what was learnt in other rooms; nothing is known about"
                    + " this one yet");
  }
}
