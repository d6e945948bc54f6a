package starchfilm.cli;

import static starchfilm.numerics.units.Units.G_PER_KG;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import picocli.CommandLine.Option;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.WeighedSoFar;

/** Weighings of a plate that is drying, typed beside its file. */
final class WeighingOptions {
  private static final MathContext FIGURES = new MathContext(9);
  private static final double MIN_S = 60;

  @Option(
      names = "--weighed",
      paramLabel = "TIME=MASS",
      description =
          "A weighing so far, such as 6h=412g after the pour; give it as often as there are"
              + " weighings. They are taken together with those in the file. With the plate, where"
              + " the file gives its tare_g; else the film alone.")
  private List<String> weighed = List.of();

  @Option(names = "--film-only", description = "The masses typed are without the plate.")
  private boolean filmOnly;

  void requireWhole() {
    if (weighed.isEmpty() && filmOnly) {
      throw CommandFailure.wrongInput(
          "--film-only: given without a weighing; add one, such as --weighed 6h=412g");
    }
  }

  boolean isEmpty() {
    return weighed.isEmpty();
  }

  /** Adds the weighings to a trial as its file would note them. */
  ObjectNode over(ObjectNode trial) {
    if (weighed.isEmpty()) {
      return trial;
    }
    ArrayNode noted = trial.withArray("weighings");
    for (String typed : weighed) {
      WeighedSoFar weighing = parsed(typed);
      ObjectNode entry = noted.addObject();
      entry.put("at", "+" + plain(weighing.timeS() / MIN_S).toPlainString() + "min");
      entry.set("mass_g", DecimalNode.valueOf(plain(weighing.massKg() * G_PER_KG)));
      if (filmOnly) {
        entry.put("with_plate", false);
      }
    }
    return trial;
  }

  private static WeighedSoFar parsed(String typed) {
    try {
      return WeighedSoFar.parse(typed);
    } catch (MistypedException e) {
      throw CommandFailure.wrongInput("--weighed: " + e.getMessage());
    }
  }

  /** The digits as typed: seconds and kilograms come back from minutes and grams by rounding. */
  private static BigDecimal plain(double value) {
    BigDecimal rounded = new BigDecimal(value).round(FIGURES).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
