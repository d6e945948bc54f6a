package starchfilm.report.learnt;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.forecast.WeighingQuestion;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Named;
import starchfilm.numerics.units.Plural;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.AnswerTable.AnswerRow;
import starchfilm.report.data.Sheet;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;

/**
 * The lessons of a notebook, figure by figure.
 *
 * @param learnt what was learnt
 */
public record LearntSheet(Learnt learnt) implements Sheet.OfRows {
  private static final String RANGES =
      "± is one standard deviation; a range holds 8 of 10 likely cases."
          + " What is not known yet keeps the textbook's range.";

  private static final String PACE =
      "How much slower or faster a room dries is the time until its latest plate is peelable."
          + " Evaporation is the exchange of film and air alone; that time usually changes less,"
          + " because the warmth of bench and room and the water's way through the film count,"
          + " too.";

  /**
   * Something that was learnt.
   *
   * @param head what it is about
   * @param lines what was learnt, a line a figure
   */
  public record LearntBlock(String head, List<String> lines) {}

  /** Everything that was learnt: room by room, starch by starch, then pours and strips. */
  public List<LearntBlock> figures() {
    List<LearntBlock> blocks = new ArrayList<>();
    for (RoomLearnt room : learnt.rooms()) {
      List<String> lines = new ArrayList<>(List.of(from(room)));
      lines.addAll(factors(room.factors()));
      blocks.add(new LearntBlock(PlainWords.sentence(room.sentence()), lines));
    }
    for (KindLearnt kind : learnt.kinds()) {
      String starch = kind.kind().tradeName();
      blocks.add(
          new LearntBlock(
              "Film of " + starch + " starch, " + Plural.of(kind.plates(), "plate") + ":",
              factors(kind.factors())));
    }
    blocks.add(new LearntBlock("Your pours:", factors(learnt.pours())));
    List<String> films = new ArrayList<>(learnt.films().stream().map(LearntSheet::film).toList());
    if (!films.isEmpty()) {
      films.add("stiffness: not known; a strip pulled until it breaks does not show it");
    }
    blocks.add(
        new LearntBlock("Strips you pulled, compared with the textbook for home film:", films));
    return told(blocks);
  }

  /** The lessons, how to read them, and what they do not rest on. */
  public List<LearntBlock> blocks() {
    List<LearntBlock> blocks = new ArrayList<>(figures());
    blocks.add(new LearntBlock(RANGES, List.of()));
    if (!learnt.rooms().isEmpty()) {
      blocks.add(new LearntBlock(PACE, List.of()));
    }
    blocks.addAll(
        told(
            List.of(
                new LearntBlock("Readings that look wrong, given little weight:", doubted()),
                new LearntBlock("Left out:", leftOut()))));
    return blocks;
  }

  private List<String> doubted() {
    return learnt.doubted().stream().map(DoubtedReading::sentence).toList();
  }

  /**
   * A doubted reading by the trial's name and the clock on the wall.
   *
   * @param reading the reading
   * @param trial the trial it is of
   * @return such as {@code Window film, weighing of Tue 14 Apr, 18:30: 131 g noted, 117 g would fit
   *     the others; counted at 3 %}
   */
  public static String doubt(DoubtedReading reading, Trial trial) {
    String which =
        trial.weighedPlates().stream()
            .flatMap(plate -> plate.seen().weighings().stream())
            .map(Weighing::timeS)
            .filter(timeS -> isOf(reading, timeS))
            .findFirst()
            .map(timeS -> "weighing of " + PourCalendar.of(trial).toTheMinute(timeS))
            .filter(dated -> trial.pouredAt().isPresent())
            .orElse(reading.reading());
    return reading.sentence(trial.name(), which);
  }

  /** Returns whether a doubted reading is the weighing of a time since the pour (s). */
  public static boolean isOf(DoubtedReading reading, double timeS) {
    return reading.reading().equals(DoubtedReading.weighing(WeighingQuestion.hours(timeS)));
  }

  private List<String> leftOut() {
    return learnt.leftOut().stream().map(left -> left.file() + ": " + left.reason()).toList();
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (LearntBlock block : blocks()) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.add(block.head());
      block.lines().forEach(line -> lines.add("  " + line));
    }
    return lines;
  }

  /** A row a factor. */
  @Override
  public AnswerTable table() {
    AnswerTable table = new AnswerTable("learn");
    for (RoomLearnt room : learnt.rooms()) {
      AnswerRow row =
          table
              .row("room", room.name())
              .put("plates", room.plates())
              .put("weighings", room.weighings());
      room.logDryingTime().ifPresent(log -> row.put("drying_time_pct", Band.exp(log)));
      room.factors().forEach(one -> factor(table.row("room", room.name()), one));
    }
    for (KindLearnt kind : learnt.kinds()) {
      for (ParameterLearnt one : kind.factors()) {
        factor(table.row("starch", kind.kind().tradeName()).put("plates", kind.plates()), one);
      }
    }
    learnt.pours().forEach(one -> factor(table.row("hand", ""), one));
    for (FilmLearnt film : learnt.films()) {
      table
          .row("strips", film.starch())
          .put("property", Named.of(film.property()))
          .put("strips", film.strips())
          .put("textbook_times", Band.exp(film.logFactor()));
    }
    return table.tell("doubted", doubted()).tell("left_out", leftOut());
  }

  private static void factor(AnswerRow row, ParameterLearnt one) {
    UncertainParameter factor = one.factor();
    Estimate deviation = new Estimate(one.deviation(), one.sd());
    row.put("factor", Named.of(factor));
    if (factor.isLogNormal()) {
      row.put("textbook_times", Band.exp(deviation));
    } else {
      row.put("offset", Band.of(deviation));
    }
  }

  /**
   * What a forecast has from the trials beside it.
   *
   * @param workshop what they taught
   * @param place where it dries
   * @return a sentence; none where nothing was learnt of any room
   */
  public static List<String> told(Workshop workshop, DryingPlace place) {
    return new LearntSheet(workshop.learnt())
        .inUse(place).map(PlainWords::sentence).stream().toList();
  }

  /**
   * The same of several forecasts.
   *
   * @param workshops what the trials in each folder taught
   * @param trials the trials that were forecast
   * @return each sentence once
   */
  public static List<String> told(Workshops workshops, List<Trial> trials) {
    return trials.stream()
        .flatMap(trial -> told(workshops.of(trial), trial.casting().place()).stream())
        .distinct()
        .toList();
  }

  /**
   * The lesson that a forecast uses.
   *
   * @param place where it dries
   * @return a clause; none where nothing was learnt of any room
   */
  public Optional<String> inUse(DryingPlace place) {
    String lesson =
        learnt.rooms().stream()
            .filter(room -> room.isCalled(place.learntRoom()))
            .map(RoomLearnt::sentence)
            .findFirst()
            .orElse("what your rooms have in common; nothing is known about this room yet");
    return learnt.rooms().isEmpty()
        ? Optional.empty()
        : Optional.of("learnt from your trials: " + lesson);
  }

  /**
   * The plates and weighings that the lesson of a room rests on.
   *
   * @param room the room
   * @return such as {@code from 2 plates and 15 weighings}
   */
  public static String from(RoomLearnt room) {
    return "from %s and %s"
        .formatted(Plural.of(room.plates(), "plate"), Plural.of(room.weighings(), "weighing"));
  }

  private static List<LearntBlock> told(List<LearntBlock> blocks) {
    return blocks.stream().filter(block -> !block.lines().isEmpty()).toList();
  }

  private static List<String> factors(List<ParameterLearnt> factors) {
    return factors.stream()
        .map(
            factor ->
                PlainWords.word(factor.factor(), "as learnt")
                    + ": "
                    + (factor.isTold() ? figures(factor) : "not known yet")
                    + (factor.isHardlyBelieved()
                        ? "; far outside the textbook's range: check times, tares and poured masses"
                        : ""))
        .toList();
  }

  private static String figures(ParameterLearnt factor) {
    Band now = Band.normal(factor.deviation(), factor.sd());
    Band before = Band.normal(0, factor.sdBefore());
    return switch (factor.factor()) {
      case AIR_SIDE, DIFFUSIVITY, ISOTHERM, BENCH, UNEVENNESS -> times(now, before);
      case HUMIDITY -> difference(PERCENT.of(now), PERCENT.of(before), "points");
      case AIR_TEMPERATURE -> difference(now, before, CELSIUS.symbol());
      case THICKNESS, SOLIDS, PLASTICISER ->
          difference(PERCENT.of(now), PERCENT.of(before), PERCENT.symbol());
    };
  }

  private static String film(FilmLearnt film) {
    return "%s of %s film: %s; %s"
        .formatted(
            film.property().tradeName(),
            film.starch(),
            times(Band.of(film.logFactor()), Band.normal(0, film.logSdBefore())),
            Plural.of(film.strips(), "strip"));
  }

  private static String times(Band logNow, Band logBefore) {
    Band now = logNow.map(Math::exp);
    Band before = logBefore.map(Math::exp);
    return String.format(
        Locale.ROOT,
        "%.2f × textbook (%.2f to %.2f; before %.2f to %.2f)",
        now.middle(),
        now.low(),
        now.high(),
        before.low(),
        before.high());
  }

  private static String difference(Band now, Band before, String unit) {
    return "%s %s (%s to %s; before %s to %s)"
        .formatted(
            Figures.change(now.middle()),
            unit,
            Figures.change(now.low()),
            Figures.change(now.high()),
            Figures.change(before.low()),
            Figures.change(before.high()));
  }
}
