package starchfilm.learning;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * The text of a workshop file: first what a reader wants to see, then the lessons that later
 * forecasts are worked out from. The same lessons give the same bytes on every machine.
 */
final class WorkshopText {
  static final int FORMAT = 1;

  private static final String ABOUT =
      "Written by the command learn from the trials in this folder, and by it alone: what is changed"
          + " here is lost the next time. Forecasts read the part called lessons.";

  private static final MathContext FIGURES = new MathContext(12);
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private WorkshopText() {}

  static String of(
      Learnt learnt,
      List<PlateLikelihood> plates,
      List<StripLikelihood> strips,
      List<TrialFacts> facts) {
    ObjectNode root = JSON.objectNode();
    root.put("about", ABOUT).put("format", FORMAT);
    ArrayNode rooms = root.putArray("rooms");
    learnt.rooms().forEach(room -> rooms.add(room(room)));
    ArrayNode kinds = root.putArray("starches");
    for (KindLearnt kind : learnt.kinds()) {
      ObjectNode node = kinds.addObject().put("starch", kind.kind().tradeName());
      node.put("plates", kind.plates()).set("factors", factors(kind.factors()));
    }
    root.set("pours", factors(learnt.pours()));
    ArrayNode films = root.putArray("films");
    for (FilmLearnt film : learnt.films()) {
      ObjectNode node = films.addObject().put("property", film.property().tradeName());
      node.put("starch", film.starch()).put("strips", film.strips());
      put(node, "log_factor", film.logFactor());
      node.put("log_factor_sd_before", number(film.logSdBefore()));
    }
    ArrayNode doubted = root.putArray("doubted");
    learnt.doubted().forEach(reading -> doubted.add(doubted(reading)));
    ArrayNode leftOut = root.putArray("left_out");
    learnt
        .leftOut()
        .forEach(left -> leftOut.addObject().put("file", left.file()).put("reason", left.reason()));
    root.set("lessons", lessons(plates, strips));
    ArrayNode trials = root.putArray("learnt_from");
    facts.forEach(
        trial -> trials.addObject().put("file", trial.file()).put("facts", trial.checksum()));
    return text(root);
  }

  private static ObjectNode room(RoomLearnt room) {
    ObjectNode node = JSON.objectNode().put("name", room.name());
    node.put("plates", room.plates()).put("weighings", room.weighings());
    room.logDryingTime().ifPresent(time -> put(node, "log_drying_time", time));
    node.set("factors", factors(room.factors()));
    return node;
  }

  private static ArrayNode factors(List<ParameterLearnt> factors) {
    ArrayNode nodes = JSON.arrayNode();
    for (ParameterLearnt factor : factors) {
      ObjectNode node = nodes.addObject().put("factor", word(factor.factor()));
      node.put("deviation", number(factor.deviation())).put("sd", number(factor.sd()));
      node.put("sd_before", number(factor.sdBefore()));
    }
    return nodes;
  }

  private static ObjectNode doubted(DoubtedReading reading) {
    return JSON.objectNode()
        .put("file", reading.file())
        .put("reading", reading.reading())
        .put("noted", reading.noted())
        .put("fitting", reading.fitting())
        .put("counts_for", number(reading.countsFor()));
  }

  private static ObjectNode lessons(List<PlateLikelihood> plates, List<StripLikelihood> strips) {
    ObjectNode lessons = JSON.objectNode();
    ArrayNode order = lessons.putArray("factors");
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      order.add(word(VarianceShares.factor(i)));
    }
    ArrayNode plateNodes = lessons.putArray("plates");
    for (PlateLikelihood lesson : plates) {
      ObjectNode node = plateNodes.addObject().put("file", lesson.file());
      node.put("room", lesson.plate().room()).put("pour_weighed", lesson.plate().pourWeighed());
      node.set("starch", starch(lesson.plate().starchShares()));
      node.put("weighings", lesson.weighings());
      node.set("pull", row(lesson.pull(), VarianceShares.COUNT));
      ArrayNode triangle = node.putArray("precision");
      RealMatrix precision = lesson.precision();
      for (int i = 0; i < VarianceShares.COUNT; i++) {
        triangle.add(row(precision.getRowVector(i), i + 1));
      }
    }
    ArrayNode stripNodes = lessons.putArray("strips");
    for (StripLikelihood lesson : strips) {
      ObjectNode node = stripNodes.addObject().put("file", lesson.file());
      node.put("property", word(lesson.property()));
      node.set("starch", starch(lesson.starchShares()));
      node.put("strips", lesson.strips());
      put(node, "log_factor", lesson.logFactor());
    }
    return lessons;
  }

  private static ObjectNode starch(Map<StarchKind, Double> shares) {
    ObjectNode node = JSON.objectNode();
    shares.forEach((kind, share) -> node.put(kind.tradeName(), number(share)));
    return node;
  }

  private static ArrayNode row(RealVector values, int count) {
    ArrayNode row = JSON.arrayNode();
    for (int i = 0; i < count; i++) {
      row.add(number(values.getEntry(i)));
    }
    return row;
  }

  private static void put(ObjectNode node, String key, Estimate estimate) {
    node.put(key, number(estimate.value())).put(key + "_sd", number(estimate.sd()));
  }

  /** Twelve figures: far more than is known, and few enough to be the same everywhere. */
  private static BigDecimal number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(FIGURES);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  /** A constant as the file spells it. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String text(ObjectNode root) {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try {
      return new ObjectMapper().writer(printer).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree in memory cannot fail", impossible);
    }
  }
}
