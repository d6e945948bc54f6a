package starchfilm.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.files.json.Located;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.film.FilmProperty;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.LeftOut;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** Reads the part of a workshop file that is shown. */
final class LearntReader {
  private LearntReader() {}

  static Learnt read(Located root) throws UnreadableFileException {
    List<RoomLearnt> rooms = new ArrayList<>();
    for (Located entry : entries(root, "rooms")) {
      rooms.add(room(entry));
    }
    List<KindLearnt> kinds = new ArrayList<>();
    for (Located entry : entries(root, "starches")) {
      kinds.add(
          new KindLearnt(
              Fields.constant(
                  Fields.member(entry, "starch"), StarchKind.values(), StarchKind::tradeName),
              Fields.count(Fields.member(entry, "plates")),
              factors(entry, "factors")));
    }
    List<FilmLearnt> films = new ArrayList<>();
    for (Located entry : entries(root, "films")) {
      films.add(
          new FilmLearnt(
              Fields.constant(
                  Fields.member(entry, "property"), FilmProperty.values(), FilmProperty::tradeName),
              text(entry, "starch"),
              Fields.count(Fields.member(entry, "strips")),
              Fields.estimate(entry, "log_factor"),
              Fields.sd(Fields.member(entry, "log_factor_sd_before"))));
    }
    List<DoubtedReading> doubted = new ArrayList<>();
    for (Located entry : entries(root, "doubted")) {
      doubted.add(
          new DoubtedReading(
              text(entry, "file"),
              text(entry, "reading"),
              text(entry, "noted"),
              text(entry, "fitting"),
              number(entry, "counts_for")));
    }
    List<LeftOut> leftOut = new ArrayList<>();
    for (Located entry : entries(root, "left_out")) {
      leftOut.add(new LeftOut(text(entry, "file"), text(entry, "reason")));
    }
    return new Learnt(rooms, kinds, factors(root, "pours"), films, doubted, leftOut);
  }

  private static RoomLearnt room(Located entry) throws UnreadableFileException {
    Optional<Estimate> time =
        Fields.has(entry, "log_drying_time")
            ? Optional.of(Fields.estimate(entry, "log_drying_time"))
            : Optional.empty();
    return new RoomLearnt(
        text(entry, "name"),
        Fields.count(Fields.member(entry, "plates")),
        Fields.count(Fields.member(entry, "weighings")),
        time,
        factors(entry, "factors"));
  }

  private static List<ParameterLearnt> factors(Located entry, String key)
      throws UnreadableFileException {
    List<ParameterLearnt> factors = new ArrayList<>();
    for (Located factor : entries(entry, key)) {
      factors.add(
          new ParameterLearnt(
              Fields.constant(
                  Fields.member(factor, "factor"), UncertainParameter.values(), WorkshopText::word),
              number(factor, "deviation"),
              Fields.sd(Fields.member(factor, "sd")),
              Fields.sd(Fields.member(factor, "sd_before"))));
    }
    return factors;
  }

  private static List<Located> entries(Located entry, String key) throws UnreadableFileException {
    return Fields.list(Fields.member(entry, key), -1);
  }

  private static String text(Located entry, String key) throws UnreadableFileException {
    return Fields.text(Fields.member(entry, key));
  }

  private static double number(Located entry, String key) throws UnreadableFileException {
    return Fields.number(Fields.member(entry, key));
  }
}
