package starchfilm.report.learnt;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Hindsight;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.Spans;

/**
 * What the trials taught, on the comparison page.
 *
 * @param anchor the section's place on the page
 * @param heading over the section
 * @param rooms the rooms, whole sentences with what they rest on
 * @param groups every factor that was learnt, by what it belongs to
 * @param looks the trials looked back on
 * @param doubted weighings and strips that hardly count, whole sentences
 * @param leftOut trials that nothing could be learnt from, whole sentences
 */
public record LearntView(
    String anchor,
    String heading,
    List<Room> rooms,
    List<Group> groups,
    List<Look> looks,
    List<String> doubted,
    List<String> leftOut) {
  /** A miss that changed by less than this share is neither nearer nor farther. */
  private static final double SAME = 0.05;

  /** What stands where no plate had taught yet. */
  private static final String NOTHING_YET = "–";

  /**
   * A room.
   *
   * @param sentence its pace
   * @param from what that rests on
   */
  public record Room(String sentence, String from) {}

  /**
   * Factors that belong together.
   *
   * @param name what they are of
   * @param lines one a factor that is stated
   */
  public record Group(String name, List<String> lines) {}

  /**
   * A trial looked back on.
   *
   * @param number its number on the page
   * @param anchor its place on the page
   * @param name its name
   * @param before how many weighed plates were poured before it
   * @param textbookMiss how far its weighings were from the textbook's forecast
   * @param learntMiss how far from what the plates before had taught
   * @param verdict nearer, farther or neither
   * @param textbookDry when the textbook would have called its thick spot dry
   * @param learntDry when the plates before
   */
  public record Look(
      int number,
      String anchor,
      String name,
      int before,
      String textbookMiss,
      String learntMiss,
      String verdict,
      String textbookDry,
      String learntDry) {}

  /**
   * A section for each folder that taught.
   *
   * @param folders what they taught
   * @param trials the trials on the page
   * @return the sections
   */
  public static List<LearntView> of(List<LearntSoFar> folders, List<TrialForecast> trials) {
    List<LearntView> views = new ArrayList<>();
    for (LearntSoFar folder : folders) {
      String heading =
          folders.size() == 1
              ? "What your weighings have taught"
              : "What the weighings in " + folder.folder() + " have taught";
      views.add(of("learnt-" + (views.size() + 1), heading, folder, trials));
    }
    return views;
  }

  private static LearntView of(
      String anchor, String heading, LearntSoFar soFar, List<TrialForecast> trials) {
    Learnt learnt = soFar.learnt();
    List<String> files = trials.stream().map(t -> t.trial().file().toString()).toList();
    return new LearntView(
        anchor,
        heading,
        learnt.rooms().stream().map(LearntView::room).toList(),
        groups(learnt),
        soFar.hindsight().stream()
            .map(look -> look(look, 1 + files.indexOf(look.trial().file().toString())))
            .toList(),
        learnt.doubted().stream().map(reading -> reading.sentence() + ".").toList(),
        LearntText.leftOut(learnt));
  }

  /**
   * Whether anything was learnt.
   *
   * @return false where there is only the hint that something could be
   */
  public boolean isTaught() {
    return Stream.of(rooms, groups, leftOut).anyMatch(list -> !list.isEmpty());
  }

  private static Room room(RoomLearnt room) {
    return new Room(PlainWords.capital(room.sentence()) + ".", LearntText.from(room));
  }

  private static List<Group> groups(Learnt learnt) {
    List<Group> groups = new ArrayList<>();
    for (RoomLearnt room : learnt.rooms()) {
      groups.add(new Group("Room “" + room.name() + "”", LearntText.told(room.factors())));
    }
    for (KindLearnt kind : learnt.kinds()) {
      groups.add(new Group(LearntText.film(kind), LearntText.told(kind.factors())));
    }
    groups.add(new Group("Your pours", LearntText.told(learnt.pours())));
    groups.add(
        new Group(LearntText.STRIPS, learnt.films().stream().map(LearntText::film).toList()));
    groups.removeIf(group -> group.lines().isEmpty());
    return groups;
  }

  private static Look look(Hindsight look, int number) {
    double textbook = look.textbook().missKg();
    double learnt = look.learnt().missKg();
    boolean first = look.platesBefore() == 0;
    return new Look(
        number,
        Anchor.ofTrial(number),
        look.trial().name(),
        look.platesBefore(),
        grams(textbook),
        first ? NOTHING_YET : grams(learnt),
        first ? "" : verdict(learnt / textbook),
        dry(look.textbook()),
        first ? NOTHING_YET : dry(look.learnt()));
  }

  private static String verdict(double ratio) {
    if (Math.abs(ratio - 1) <= SAME) {
      return "as near";
    }
    return ratio < 1 ? "nearer" : "farther";
  }

  private static String grams(double kg) {
    return ReaderUnit.GRAM.figure(kg);
  }

  private static String dry(Hindsight.Guess guess) {
    return Spans.of(guess.dryThroughS());
  }
}
