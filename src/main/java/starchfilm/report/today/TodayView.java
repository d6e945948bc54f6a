package starchfilm.report.today;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.casting.trial.Trial;
import starchfilm.report.caution.Caution;
import starchfilm.report.chart.CalendarChart;
import starchfilm.report.words.Plural;
import starchfilm.report.words.PourCalendar;
import starchfilm.today.Need;
import starchfilm.today.Standing;
import starchfilm.today.Today;

/**
 * What to do now, in words and as one picture.
 *
 * @param moment the moment
 * @param headline how many plates need somebody, or when the next look is
 * @param todo the plates, the most urgent first
 * @param calendar all of them on one calendar
 * @param planned what was not poured yet
 * @param questions what is odd, such as a pour in the future
 */
public record TodayView(
    String moment,
    String headline,
    List<Item> todo,
    CalendarChart calendar,
    List<String> planned,
    List<String> questions) {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy, HH:mm", Locale.ENGLISH);

  /**
   * One plate.
   *
   * @param standing how it stands
   * @param need what it needs, as a word of style sheets and data files
   * @param waits true where nothing is to be done yet
   * @param sentence what it needs and why
   * @param words more about it
   * @param page the address of its trial
   * @param card the address of the place where it is weighed
   */
  public record Item(
      Standing standing,
      String need,
      boolean waits,
      String sentence,
      PlateWords words,
      String page,
      String card) {
    static Item of(Standing standing, Addresses addresses) {
      PlateWords words = new PlateWords(standing);
      return new Item(
          standing,
          standing.need().name().toLowerCase(Locale.ROOT),
          standing.need() == Need.WAIT,
          words.sentence(),
          words,
          addresses.page(standing),
          addresses.card(standing));
    }
  }

  /** Where plates are described. */
  public interface Addresses {
    /** Nowhere: for a terminal. */
    Addresses NONE =
        new Addresses() {
          @Override
          public String page(Standing standing) {
            return "";
          }

          @Override
          public String card(Standing standing) {
            return "";
          }
        };

    /** The page of a plate's trial. */
    String page(Standing standing);

    /** The place where a plate is weighed. */
    String card(Standing standing);
  }

  /**
   * Puts it into words.
   *
   * @param today what to do
   * @param addresses where plates are described
   * @return the view
   */
  public static TodayView of(Today today, Addresses addresses) {
    return new TodayView(
        MOMENT.format(today.now()),
        headline(today),
        today.standings().stream().map(plate -> Item.of(plate, addresses)).toList(),
        PlateCalendar.of(today),
        today.planned().stream().map(Trial::name).toList(),
        questions(today));
  }

  /** What may hurt whoever does it. */
  public List<Caution> cautions() {
    return todo.stream().flatMap(item -> item.words().cautions().stream()).distinct().toList();
  }

  private static String headline(Today today) {
    int need =
        today.standings().stream()
            .filter(standing -> standing.need() != Need.WAIT)
            .mapToInt(standing -> standing.plates().size())
            .sum();
    if (today.standings().isEmpty()) {
      return "No plate is drying.";
    }
    if (need > 0) {
      return Plural.of(need, "plate") + (need == 1 ? " needs" : " need") + " you.";
    }
    return today
        .nextLook()
        .map(
            standing ->
                "Nothing to do now. Next look: "
                    + new PlateWords(standing).look()
                    + ", "
                    + new PlateWords(standing).who()
                    + ".")
        .orElse("Nothing to do now.");
  }

  private static List<String> questions(Today today) {
    List<String> questions = new ArrayList<>();
    for (Trial trial : today.ahead()) {
      questions.add(
          trial.name()
              + " is noted as poured "
              + PourCalendar.of(trial).pour()
              + ", which is in the future: is that date right, and is this clock?");
    }
    return questions;
  }
}
