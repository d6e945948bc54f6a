package starchfilm.learning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.film.FilmProperty;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;

/** Reads the lessons of a workshop file; whatever is not as learn writes it is refused. */
final class WorkshopReader {
  private static final long MAX_BYTES = 20_000_000;
  private static final Pattern CHECKSUM = Pattern.compile("[0-9a-f]{8}");

  private WorkshopReader() {}

  /**
   * The content of a file.
   *
   * @param learnt what is shown
   * @param plates from weighings
   * @param strips from pull tests
   * @param facts of the trials it was learnt from; empty in a file from before they were kept
   */
  record Lessons(
      Learnt learnt,
      List<PlateLikelihood> plates,
      List<StripLikelihood> strips,
      List<TrialFacts> facts) {}

  static Lessons read(Path file) throws UnreadableFileException {
    Located root = tree(file);
    Located format = Fields.member(root, "format");
    if (Fields.number(format) != WorkshopText.FORMAT) {
      throw Fields.wrong(format, "format " + WorkshopText.FORMAT);
    }
    Located lessons = Fields.member(root, "lessons");
    List<Located> order = Fields.list(Fields.member(lessons, "factors"), VarianceShares.COUNT);
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      String factor = WorkshopText.word(VarianceShares.factor(i));
      if (!Fields.text(order.get(i)).equals(factor)) {
        throw Fields.wrong(order.get(i), '"' + factor + '"');
      }
    }
    List<PlateLikelihood> plates = new ArrayList<>();
    for (Located entry : Fields.list(Fields.member(lessons, "plates"), -1)) {
      plates.add(plate(entry));
    }
    List<StripLikelihood> strips = new ArrayList<>();
    for (Located entry : Fields.list(Fields.member(lessons, "strips"), -1)) {
      strips.add(strip(entry));
    }
    return new Lessons(LearntReader.read(root), plates, strips, facts(root));
  }

  private static List<TrialFacts> facts(Located root) throws UnreadableFileException {
    List<TrialFacts> facts = new ArrayList<>();
    if (Fields.has(root, "learnt_from")) {
      for (Located entry : Fields.list(Fields.member(root, "learnt_from"), -1)) {
        Located checksum = Fields.member(entry, "facts");
        if (!CHECKSUM.matcher(Fields.text(checksum)).matches()) {
          throw Fields.wrong(checksum, "eight hexadecimal digits");
        }
        facts.add(new TrialFacts(Fields.text(Fields.member(entry, "file")), Fields.text(checksum)));
      }
    }
    return facts;
  }

  private static Located tree(Path file) throws UnreadableFileException {
    if (FileText.isLarger(file, MAX_BYTES)) {
      throw new UnreadableFileException(
          "more than " + MAX_BYTES / 1_000_000 + " MB", "a file as learn writes it", Fields.MEND);
    }
    byte[] bytes = FileText.bytes(file, MAX_BYTES);
    try {
      return new LocatedReader().read(FileText.utf8(bytes));
    } catch (UnreadableFileException e) {
      // Nobody mends this file by hand, whatever is wrong with its text.
      throw new UnreadableFileException(
          e.line().orElse(0),
          e.column().orElse(0),
          e.given(),
          "a file as learn writes it",
          Fields.MEND);
    }
  }

  private static PlateLikelihood plate(Located entry) throws UnreadableFileException {
    RealMatrix precision = new Array2DRowRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    List<Located> triangle = Fields.list(Fields.member(entry, "precision"), VarianceShares.COUNT);
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      RealVector row = row(triangle.get(i), i + 1);
      for (int j = 0; j <= i; j++) {
        precision.setEntry(i, j, row.getEntry(j));
        precision.setEntry(j, i, row.getEntry(j));
      }
    }
    LessonCheck.requireInformation(Fields.member(entry, "precision"), precision);
    Located pull = Fields.member(entry, "pull");
    PlateLikelihood lesson =
        new PlateLikelihood(
            Fields.text(Fields.member(entry, "file")),
            new PlateKey(
                RoomLearnt.key(Fields.text(Fields.member(entry, "room"))),
                starch(entry),
                Fields.flag(Fields.member(entry, "pour_weighed"))),
            Fields.count(Fields.member(entry, "weighings")),
            precision,
            row(pull, VarianceShares.COUNT));
    LessonCheck.requireWithinReach(pull, lesson);
    return lesson;
  }

  private static StripLikelihood strip(Located entry) throws UnreadableFileException {
    return new StripLikelihood(
        Fields.text(Fields.member(entry, "file")),
        starch(entry),
        Fields.constant(
            Fields.member(entry, "property"), FilmProperty.values(), WorkshopText::word),
        Fields.count(Fields.member(entry, "strips")),
        Fields.estimate(entry, "log_factor"));
  }

  private static Map<StarchKind, Double> starch(Located entry) throws UnreadableFileException {
    Located starch = Fields.member(entry, "starch");
    Map<StarchKind, Double> shares = new EnumMap<>(StarchKind.class);
    if (starch instanceof Located.ObjectValue object) {
      for (Map.Entry<String, Located.Member> share : object.members().entrySet()) {
        StarchKind kind =
            Arrays.stream(StarchKind.values())
                .filter(k -> k.tradeName().equals(share.getKey()))
                .findFirst()
                .orElseThrow(() -> Fields.wrong(starch, "known kinds of starch"));
        shares.put(kind, Fields.number(share.getValue().value()));
      }
    }
    LessonCheck.requireAllOfIt(starch, shares.values());
    return shares;
  }

  private static RealVector row(Located value, int count) throws UnreadableFileException {
    RealVector row = new ArrayRealVector(count);
    List<Located> entries = Fields.list(value, count);
    for (int i = 0; i < count; i++) {
      row.setEntry(i, Fields.number(entries.get(i)));
    }
    return row;
  }
}
