package starchfilm.report.learnt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Plural;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.PlainWords;

/**
 * The lessons of a notebook in three sentences and one picture.
 *
 * @param sentences the sentences
 * @param axis labelled lines of the picture, in times the textbook
 * @param rooms how long films take to dry in each room, over a textbook room
 * @param films strength and stretch, over the rules for home film
 * @param unknown what the weighings do not tell, as words
 */
public record LearntPicture(
    List<String> sentences,
    List<Axis.Tick> axis,
    List<LearntLine> rooms,
    List<LearntLine> films,
    List<String> unknown) {
  /** Equal lengths are equal ratios, so that half and double are as far from the textbook. */
  private static final Scale SCALE = Strip.logarithmic(0.25, 4);

  private static final double[] TICKS = {0.25, 0.5, 1, 2, 4};

  /**
   * A line of the picture.
   *
   * @param label what it is of
   * @param words the figure now
   * @param strip the range before and now
   */
  public record LearntLine(String label, String words, Strip strip) {}

  /**
   * The picture of what was learnt.
   *
   * @param learnt what was learnt
   * @return sentences and picture
   */
  public static LearntPicture of(Learnt learnt) {
    List<Axis.Tick> axis = new ArrayList<>();
    for (double tick : TICKS) {
      axis.add(
          new Axis.Tick(
              SCALE.place(tick),
              tick == 1
                  ? "as the textbook"
                  : tick < 1 ? "1/" + Figures.noted(1 / tick) : Figures.noted(tick) + " times",
              "",
              tick != 1));
    }
    return new LearntPicture(
        sentences(learnt),
        axis,
        learnt.rooms().stream()
            .filter(room -> room.logDryingTime().isPresent())
            .map(LearntPicture::room)
            .toList(),
        learnt.films().stream().map(LearntPicture::film).toList(),
        learnt.rooms().stream()
            .flatMap(room -> untold("room \u201C" + room.name() + "\u201D", room.factors()))
            .toList());
  }

  private static List<String> sentences(Learnt learnt) {
    List<String> sentences = new ArrayList<>();
    List<RoomLearnt> rooms = learnt.rooms();
    String more =
        rooms.size() > 2 ? "; " + Plural.of(rooms.size() - 2, "more room") + " below" : "";
    rooms.stream()
        .limit(2)
        .map(RoomLearnt::sentence)
        .reduce((first, second) -> first + "; " + second)
        .ifPresent(told -> sentences.add(PlainWords.sentence(told + more)));
    int plates = rooms.stream().mapToInt(RoomLearnt::plates).sum();
    int weighings = rooms.stream().mapToInt(RoomLearnt::weighings).sum();
    if (plates > 0) {
      sentences.add(
          "That rests on %s with %s%s."
              .formatted(
                  Plural.of(plates, "plate"), Plural.of(weighings, "weighing"), sharper(rooms)));
    }
    int strips = learnt.films().stream().mapToInt(FilmLearnt::strips).max().orElse(0);
    sentences.add(
        strips == 0
            ? "No strip has been pulled yet, so strength and stretch are the textbook\u2019s."
            : Plural.of(strips, "pulled strip") + " show strength and stretch.");
    return sentences;
  }

  /** How much better the air over the plates is known than before. */
  private static String sharper(List<RoomLearnt> rooms) {
    double ratio =
        rooms.stream()
            .flatMap(room -> room.factors().stream())
            .filter(factor -> factor.factor() == UncertainParameter.AIR_SIDE && factor.isTold())
            .mapToDouble(factor -> factor.sdBefore() / factor.sd())
            .max()
            .orElse(1);
    return ratio < 1.2
        ? ""
        : "; they make the textbook\u2019s range for the air over the plates up to %s times narrower"
            .formatted(Figures.two(ratio));
  }

  private static LearntLine room(RoomLearnt room) {
    double sdBefore =
        room.factors().stream()
            .filter(factor -> factor.factor() == UncertainParameter.AIR_SIDE)
            .mapToDouble(ParameterLearnt::sdBefore)
            .findFirst()
            .orElse(0);
    return row(room.name(), sdBefore, room.logDryingTime().orElseThrow());
  }

  private static LearntLine film(FilmLearnt film) {
    return row(
        film.property().tradeName() + (film.starch().isEmpty() ? "" : " of " + film.starch()),
        film.logSdBefore(),
        film.logFactor());
  }

  private static LearntLine row(String label, double logSdBefore, Estimate logNow) {
    Band now = Band.exp(logNow);
    Band before = Band.exp(new Estimate(0, logSdBefore));
    String words = String.format(Locale.ROOT, "%.2f times (%s)", now.middle(), range(now));
    return new LearntLine(
        label,
        words,
        new Strip(
            label,
            words + "; before " + range(before),
            List.of(new Axis.Tick(SCALE.place(1), "", "", true)),
            new Lane(
                "",
                "",
                "",
                0,
                List.of(Lane.Range.of("prior", SCALE, before), Lane.Range.of("told", SCALE, now)),
                List.of(new Lane.Dot("dry", SCALE.place(now.middle())))),
            List.of()));
  }

  private static String range(Band band) {
    return String.format(Locale.ROOT, "%.2f\u2013%.2f", band.low(), band.high());
  }

  private static Stream<String> untold(String of, List<ParameterLearnt> factors) {
    return factors.stream()
        .filter(factor -> !factor.isTold())
        .map(factor -> of + ": " + PlainWords.word(factor.factor(), "as learnt"));
  }
}
