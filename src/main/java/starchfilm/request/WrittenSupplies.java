package starchfilm.request;

import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.material.recipe.GlycerolStock.UNKNOWN_PURITY;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Words;
import starchfilm.files.notebook.FieldInput;
import starchfilm.files.notebook.JarLevel;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.planning.StarchAtHand;
import starchfilm.planning.Supplies;

/** What is in the cupboard, as written. */
final class WrittenSupplies {

  private static final String NONE = "none";

  /** Tenths of a gram in a kilogram. */
  private static final double TENTHS = 1e4;

  private WrittenSupplies() {}

  static Optional<Supplies> read(EntryReader in, Optional<JarLevel> kept) {
    return in.made(
        () -> {
          if (!in.has("jar.kept")) {
            in.require("supplies.glycerol", "what the jar holds, such as 250g, or none");
          }
          in.require("supplies.starch", "a starch you have, such as potato");
          double jarKg = jarKg(in, kept);
          GlycerolStock jar = kept.map(one -> one.jar().stock()).orElseGet(() -> jar(in, jarKg));
          double acidity =
              in.usually(
                  "supplies.vinegar", WrittenSupplies::shareOrNone, 0.05, "vinegar of 5 % acid");
          List<StarchAtHand> starches =
              in.all(
                      "supplies.starch",
                      words ->
                          WrittenStarch.all(words).stream()
                              .map(starch -> atHand(in, starch))
                              .toList())
                  .orElse(List.of());
          if (in.has("jar.kept") && kept.isEmpty()) {
            // What a mistyped jar holds is no second mistake.
            throw new NoSuchElementException("jar.kept");
          }
          return new Supplies(jar, jarKg, starches, acidity);
        });
  }

  /** What may be used: as written, or of a kept jar the low end of what is left. */
  private static double jarKg(EntryReader in, Optional<JarLevel> kept) {
    double kgPerM3 =
        kept.map(one -> one.jar().stock().kgPerM3())
            .orElseGet(
                () ->
                    GlycerolStock.kgPerM3(
                        in.one("supplies.purity", WrittenSupplies::share, UNKNOWN_PURITY).value()));
    double leastKg =
        kept.map(one -> Math.floor(one.leftBandKg().low() * TENTHS) / TENTHS).orElse(Double.NaN);
    double kg =
        in.one(
            "supplies.glycerol",
            typed -> isNone(typed) ? 0 : noneOrMoreKg(in, typed, kgPerM3),
            leastKg);
    if (in.has("supplies.glycerol")
        && !in.hasMistakes()
        && in.one("supplies.glycerol", WrittenSupplies::isVolume, false)) {
      in.assume("glycerol measured at 20 \u00B0C, " + Figures.of(kgPerM3 / 1e3, 3) + " g/ml");
    }
    kept.ifPresent(
        one -> {
          in.remark(one.sentence());
          one.tooLittleFor(kg).ifPresent(text -> in.remark("It is to give " + text + "."));
          if (!in.has("supplies.glycerol")) {
            in.assume(
                "no more glycerol than the low end of what is left, " + Figures.grams(kg) + " g");
          }
        });
    return kg;
  }

  private static double noneOrMoreKg(EntryReader in, String typed, double kgPerM3) {
    if (FieldInput.isUnknown(typed)) {
      throw new MistypedException(
          typed,
          Quantities.MASS_OR_VOLUME,
          "a plan starts from what there is: weigh the jar, or write none");
    }
    Quantities.massOrVolume(in, typed, "supplies.purity");
    double kg = Quantities.massKg(typed, kgPerM3).value();
    tellMiddle(in, typed, kg);
    if (kg < 0) {
      throw new MistypedException(typed, "0 g or more", "write the grams in the jar");
    }
    return kg;
  }

  /** A plan asks how much there is, not how surely. */
  private static void tellMiddle(EntryReader in, String typed, double kg) {
    TypedAmount amount = Quantities.massOrVolume(typed);
    if (amount.is(Dimension.MASS) && amount.isRange()) {
      in.remark("Of %s the middle counts, %s g.".formatted(typed.strip(), Figures.grams(kg)));
    }
  }

  private static boolean isVolume(String typed) {
    return !isNone(typed) && Quantities.isVolume(typed);
  }

  private static double shareOrNone(String typed) {
    return isNone(typed) ? 0 : SHARE.si(typed);
  }

  /** The glycerol of a jar; what an unknown one is taken to hold. */
  private static Estimate share(String typed) {
    return FieldInput.isUnknown(typed) ? UNKNOWN_PURITY : Quantities.shareOrRange(typed);
  }

  private static boolean isNone(String typed) {
    return typed.strip().equalsIgnoreCase(NONE);
  }

  private static GlycerolStock jar(EntryReader in, double jarKg) {
    if (in.has("supplies.purity") && in.has("supplies.pure")) {
      in.refuse(
          "%s and %s say the same; leave one out"
              .formatted(in.quoted("supplies.purity"), in.quoted("supplies.pure")));
    }
    double salt = in.one("supplies.salt", SHARE::si, 0.0);
    GlycerolOrigin origin = JarOrigin.of(in, "supplies.salt", salt);
    Estimate glycerol = purity(in, jarKg, salt);
    if (glycerol.value() <= 1 && glycerol.value() + salt > 1 + 1e-9) {
      in.refuse(
          "supplies.salt",
          """
          %s beside the glycerol makes more than 100 %% of the jar, allowed 100 %% together; what \
          is left is water\
          """
              .formatted(in.word("supplies.salt")));
    }
    return new GlycerolStock(glycerol, Estimate.exact(salt), origin);
  }

  private static Estimate purity(EntryReader in, double jarKg, double salt) {
    if (in.has("supplies.pure")) {
      double pureKg =
          in.one("supplies.pure", typed -> Quantities.massKg(typed).value(), Double.NaN);
      if (pureKg > jarKg || pureKg < 0) {
        String held = in.word("supplies.glycerol");
        in.refuse(
            "supplies.pure",
            """
            %s of pure glycerol given in a jar of %s, allowed 0 g to %s; check both, or assay the \
            jar\
            """
                .formatted(in.word("supplies.pure"), held, held));
      }
      return Estimate.exact(jarKg > 0 ? pureKg / jarKg : 1);
    }
    if (!in.one("supplies.purity", FieldInput::isUnknown, true)) {
      Optional<Estimate> share = in.one("supplies.purity", WrittenSupplies::share);
      if (share.isPresent() && (share.get().value() <= 0 || share.get().value() > 1)) {
        in.refuse(
            "supplies.purity",
            """
            %s given, allowed more than 0 to 100 %%; write the glycerol in the jar in per cent, \
            such as 82%%\
            """
                .formatted(in.word("supplies.purity")));
      }
      return share.orElse(UNKNOWN_PURITY);
    }
    double rest = 1 - salt;
    if (jarKg == 0) {
      return Estimate.exact(rest);
    }
    in.remark(
        "The jar's purity is unknown; "
            + Words.percent(UNKNOWN_PURITY)
            + " glycerol is assumed, which widens every range. Assay the jar to narrow it.");
    return UNKNOWN_PURITY.value() <= rest
        ? UNKNOWN_PURITY
        : new Estimate(Math.max(0, rest), UNKNOWN_PURITY.sd());
  }

  private static StarchAtHand atHand(EntryReader in, WrittenStarch starch) {
    StarchKind kind = starch.kind();
    if (starch.isFlour()) {
      throw new MistypedException(
          kind + " flour",
          "starch",
          "flour holds protein and fibre, for which no film can be planned; write the starch");
    }
    Optional<Estimate> massKg =
        starch.mass().map(typed -> Quantities.massKg(typed, kind.bulkDensityKgPerM3()));
    massKg.ifPresent(kg -> tellMiddle(in, starch.mass().orElseThrow(), kg.value()));
    if (starch.mass().filter(Quantities::isVolume).isPresent()) {
      in.assume(
          "%s starch by its volume as %s, loose or shaken down"
              .formatted(kind, Words.grams(massKg.orElseThrow())));
    }
    return new StarchAtHand(
        kind,
        massKg.map(kg -> OptionalDouble.of(kg.value())).orElse(OptionalDouble.empty()),
        starch
            .moisture()
            .map(share -> Estimate.exact(SHARE.si(share)))
            .orElse(kind.powderMoisture()));
  }
}
