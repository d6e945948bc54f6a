package starchfilm.report.today;

import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.Milestone;
import starchfilm.files.findings.PlainLine;
import starchfilm.learning.Workshops;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.units.Plural;
import starchfilm.report.Awaited;
import starchfilm.report.caution.Caution;
import starchfilm.report.chart.CalendarChart;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.AnswerTable.AnswerRow;
import starchfilm.report.data.Sheet;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.today.ScaleForecast;
import starchfilm.today.Standing;
import starchfilm.today.Today;

/**
 * The plates that need somebody now, in words and as one picture.
 *
 * @param today what to do
 * @param learnt whether the forecasts are corrected for their rooms, a sentence a room
 */
public record TodaySheet(Today today, List<String> learnt) implements Sheet.OfRows {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy, H:mm", Locale.ENGLISH);

  /**
   * The same with what the forecasts of the drying plates have from earlier trials.
   *
   * @param today what to do
   * @param workshops what those taught
   */
  public static TodaySheet of(Today today, Workshops workshops) {
    List<Trial> drying =
        today.standings().stream().map(plate -> plate.forecast().trial()).distinct().toList();
    List<String> rooms = LearntSheet.told(workshops, drying);
    return new TodaySheet(
        today,
        rooms.isEmpty() && !drying.isEmpty()
            ? List.of("Nothing has been learnt yet; the forecasts use textbook rates alone.")
            : rooms);
  }

  /** The plates, the most urgent first. */
  public List<PlateNow> plates() {
    return today.standings().stream().map(PlateNow::new).toList();
  }

  /** The moment. */
  public String moment() {
    return MOMENT.format(today.now());
  }

  /** All plates on one calendar. */
  public CalendarChart calendar() {
    return PlateCalendar.of(today);
  }

  /** The cautions for whoever tends to the plates. */
  public List<Caution> cautions() {
    return plates().stream().flatMap(plate -> plate.cautions().stream()).distinct().toList();
  }

  /** The number of plates that need somebody, or the time of the next look. */
  public String headline() {
    int need =
        plates().stream()
            .filter(plate -> !plate.isWaiting())
            .mapToInt(plate -> plate.standing().plates().size())
            .sum();
    if (today.standings().isEmpty()) {
      return "No plate is drying.";
    }
    if (need > 0) {
      return Plural.of(need, "plate") + (need == 1 ? " needs" : " need") + " you.";
    }
    return today
        .nextLook()
        .map(PlateNow::new)
        .map(next -> "Nothing to do now. Next look: " + next.look() + ", " + next.who() + ".")
        .orElse("Nothing to do now.");
  }

  /** What is to be said of pours that are noted for later than now: a question, if it is odd. */
  public List<String> questions() {
    return today.ahead().stream()
        .map(
            trial ->
                "%s is noted as poured %s, %s"
                    .formatted(
                        trial.name(),
                        PourCalendar.of(trial).pour(),
                        trial.isPouredAfter(today.now())
                            ? "which is in the future: is that date right, and is the clock of this"
                                + " computer right?"
                            : "and is listed here from then on."))
        .toList();
  }

  /** A row for plates of one pour that nobody distinguished. */
  @Override
  public AnswerTable table() {
    AnswerTable table = new AnswerTable("today");
    plates().forEach(plate -> put(table.row("plates", plate.forecast().trial().name()), plate));
    return table
        .tell("now", List.of(today.now().truncatedTo(ChronoUnit.MINUTES).toString()))
        .tell("headline", List.of(headline()))
        .tell("planned", today.planned().stream().map(Trial::name).toList())
        .tell("questions", questions())
        .tell("learnt", learnt)
        .cautioning(cautions());
  }

  private static void put(AnswerRow row, PlateNow plate) {
    Standing standing = plate.standing();
    Trial trial = plate.forecast().trial();
    PourCalendar calendar = PourCalendar.of(trial);
    ScaleForecast scale = standing.scale();
    double emptyKg = standing.emptyKg().orElse(0);
    row.put("file", PlainLine.of(trial.file()))
        .put("plates", standing.of())
        .put("numbers", PlateNow.numbers(standing.plates()))
        .put("need", plate.need())
        .put("sentence", plate.sentence())
        .put("look_from", at(calendar, standing.lookFromS()))
        .put("look_until", at(calendar, standing.lookUntilS()))
        .put("mould_from", at(calendar, standing.mouldFromS()))
        .put("scale_now_g", scale.nowKg().map(kg -> emptyKg + kg))
        .put("scale_at_rest_g", emptyKg + scale.restKg())
        .put("empty_plate_g", standing.emptyKg().orElse(Double.NaN))
        .put("water_left_pct", standing.waterLeft())
        .put("range_left_pct", scale.rangeLeft());
    for (Milestone one : Awaited.all()) {
      put(row, Awaited.field(one), plate.forecast().drying().timeS(one), calendar);
      row.put("scale_" + Awaited.key(one) + "_g", emptyKg + scale.kgAt(one));
    }
    if (plate.before().isPresent()) {
      put(row, "dry_through_at_the_pour", standing.readyAtThePourS(), calendar);
    }
    standing
        .last()
        .filter(Weighing::tared)
        .ifPresent(
            last ->
                row.put("last_weighed_at", at(calendar, last.timeS()))
                    .put("last_weighed_g", emptyKg + last.filmMassKg()));
  }

  /** A time with its range, since the pour and by the clock. */
  private static void put(AnswerRow row, String what, Band afterPourS, PourCalendar calendar) {
    row.put(what + "_h", afterPourS)
        .put(what + "_at", at(calendar, afterPourS.middle()))
        .put(what + "_at_low", at(calendar, afterPourS.low()))
        .put(what + "_at_high", at(calendar, afterPourS.high()));
  }

  private static String at(PourCalendar calendar, double afterPourS) {
    return calendar.iso(afterPourS).orElse("");
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(moment() + ". " + headline());
    for (PlateNow plate : plates()) {
      lines.add("");
      lines.add(plate.sentence());
      lines.add("  " + PlainWords.sentence(plate.waterLeft()) + " Look: " + plate.look() + ".");
      lines.add(
          Awaited.all().stream()
              .map(one -> PlainWords.word(one) + " " + plate.scaleAt(one))
              .collect(
                  Collectors.joining(
                      ", ", "  " + plate.scaleHead() + ": now " + plate.scaleNow() + ", ", ".")));
      plate
          .before()
          .ifPresent(
              before -> lines.add("  Forecast at the pour: dry through after " + before + "."));
      plate
          .forecast()
          .weighed()
          .questions()
          .forEach(asked -> lines.add("  " + asked.withCommand(plate.forecast().trial())));
    }
    if (!today.planned().isEmpty()) {
      lines.add("");
      lines.add(
          today.planned().stream()
              .map(Trial::name)
              .collect(Collectors.joining("; ", "Not poured yet: ", ".")));
    }
    lines.addAll(questions());
    cautions().forEach(caution -> lines.add("! " + caution.sentence()));
    lines.addAll(learnt);
    return lines;
  }
}
