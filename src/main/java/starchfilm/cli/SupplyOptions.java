package starchfilm.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.StarchAtHand;
import starchfilm.planning.Supplies;

/** What is in the cupboard, as options. */
final class SupplyOptions {
  private static final String NONE = "none";

  /** A jar that nobody assayed holds this much glycerol; assumed, as for a trial file. */
  private static final Estimate UNKNOWN_PURITY = Estimate.between(0.8, 1);

  private static final String COMMON_VINEGAR = "5%";

  @Option(
      names = "--glycerol",
      paramLabel = "MASS",
      description = "What the jar of glycerol holds, such as 250g; none for no glycerol.")
  private String glycerol = "";

  @Option(
      names = "--purity",
      paramLabel = "SHARE",
      description =
          "Glycerol in the jar, such as 82%% (see starchfilm assay). Not given: 80 to 100 %%.")
  private @Nullable String purity;

  @Option(
      names = "--pure",
      paramLabel = "MASS",
      description = "Or the pure glycerol in the jar, such as 205g.")
  private @Nullable String pure;

  @Option(
      names = "--salt",
      paramLabel = "SHARE",
      description = "Salt and soap in the jar, such as 3%%. Not given: none.")
  private @Nullable String salt;

  @Option(
      names = TypedOrigin.NAME,
      paramLabel = TypedOrigin.LABEL,
      description = TypedOrigin.DESCRIPTION)
  private @Nullable String origin;

  @Option(
      names = "--starch",
      arity = "1..3",
      paramLabel = "KIND [MASS [MOISTURE]]",
      description =
          "A starch, and how much there is: potato, or potato 400g; may be repeated. Known: corn,"
              + " waxy corn, potato, tapioca, wheat, rice.")
  private List<String> starches = List.of();

  @Option(
      names = "--vinegar",
      paramLabel = "SHARE",
      description = "Acid in the vinegar as labelled; none for no vinegar. Default: 5%%.")
  private String vinegar = COMMON_VINEGAR;

  boolean isPurityKnown() {
    return purity != null || pure != null || glycerol.equals(NONE);
  }

  void requireGiven() {
    if (glycerol.isEmpty()) {
      throw CommandFailure.wrongInput(
          "--glycerol: not given; write what the jar holds, such as --glycerol 250g, or none");
    }
    if (starches.isEmpty()) {
      throw CommandFailure.wrongInput(
          "--starch: not given; write a starch you have, such as --starch potato");
    }
  }

  Supplies supplies() {
    double jarKg = isNone(glycerol) ? 0 : TypedAmounts.massKg("--glycerol", glycerol).value();
    double acidity = isNone(vinegar) ? 0 : TypedAmounts.share("--vinegar", vinegar);
    return new Supplies(jar(jarKg), jarKg, starches(), acidity);
  }

  private static boolean isNone(String typed) {
    return typed.strip().equalsIgnoreCase(NONE);
  }

  private GlycerolStock jar(double jarKg) {
    if (purity != null && pure != null) {
      throw CommandFailure.wrongInput("--purity and --pure say the same; leave one out");
    }
    double saltFraction = salt == null ? 0 : TypedAmounts.share("--salt", salt);
    Estimate glycerolFraction = purity(jarKg, saltFraction);
    if (glycerolFraction.value() + saltFraction > 1 + 1e-9) {
      throw CommandFailure.wrongInput(
          "--salt: "
              + salt
              + " beside the glycerol makes more than 100 % of the jar, allowed 100 % together;"
              + " what is left is water");
    }
    return new GlycerolStock(
        glycerolFraction, Estimate.exact(saltFraction), TypedOrigin.of(origin, salt));
  }

  private Estimate purity(double jarKg, double saltFraction) {
    if (pure != null) {
      double pureKg = TypedAmounts.massKg("--pure", pure).value();
      if (!(pureKg <= jarKg) || pureKg < 0) {
        throw CommandFailure.wrongInput(
            "--pure: "
                + pure
                + " of pure glycerol given in a jar of "
                + glycerol
                + ", allowed 0 g to "
                + glycerol
                + "; check both, or assay the jar");
      }
      return Estimate.exact(jarKg > 0 ? pureKg / jarKg : 1);
    }
    if (purity != null) {
      double share = TypedAmounts.share("--purity", purity);
      if (!(share > 0 && share <= 1)) {
        throw CommandFailure.wrongInput(
            "--purity: "
                + purity
                + " given, allowed more than 0 to 100 %; write the glycerol in the jar in per cent,"
                + " such as 82%");
      }
      return Estimate.exact(share);
    }
    if (jarKg == 0) {
      return Estimate.exact(1 - saltFraction);
    }
    double rest = 1 - saltFraction;
    return UNKNOWN_PURITY.value() <= rest
        ? UNKNOWN_PURITY
        : new Estimate(Math.max(0, rest), UNKNOWN_PURITY.sd());
  }

  /** Each kind is followed by what is known of it, so a word that is no amount begins a new one. */
  private List<StarchAtHand> starches() {
    List<StarchAtHand> list = new ArrayList<>();
    int i = 0;
    while (i < starches.size()) {
      StarchKind kind =
          NearName.find(
              "--starch", starches.get(i++), List.of(StarchKind.values()), StarchKind::tradeName);
      OptionalDouble mass = OptionalDouble.empty();
      Estimate moisture = kind.powderMoisture();
      if (i < starches.size() && isAmount(starches.get(i)) && !isShare(starches.get(i))) {
        mass = OptionalDouble.of(TypedAmounts.massKg("--starch", starches.get(i++)).value());
      }
      if (i < starches.size() && isShare(starches.get(i))) {
        moisture = Estimate.exact(TypedAmounts.share("--starch", starches.get(i++)));
      }
      list.add(new StarchAtHand(kind, mass, moisture));
    }
    return list;
  }

  private static boolean isAmount(String typed) {
    return !typed.isEmpty() && "+-0123456789".indexOf(typed.charAt(0)) >= 0;
  }

  private static boolean isShare(String typed) {
    return isAmount(typed) && typed.strip().endsWith("%");
  }
}
