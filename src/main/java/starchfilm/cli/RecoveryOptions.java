package starchfilm.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.OilBatch;
import starchfilm.jar.recovery.OilKind;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.numerics.evidence.Estimate;

/** The record of how a jar was recovered, as options. */
final class RecoveryOptions {
  private static final Estimate NONE = Estimate.exact(0);
  private static final String SOLID = "solid";

  @Option(
      names = "--oil",
      arity = "2",
      paramLabel = "WHAT",
      description = "Kind and amount of the oil: sunflower \"1 l\".")
  private @Nullable List<String> oil;

  @Option(
      names = "--acid-value",
      paramLabel = "MG-KOH-PER-G",
      description = "Free acid of the oil; left out, that of its kind is taken.")
  private @Nullable String acidValue;

  @Option(
      names = "--alcohol",
      arity = "2",
      paramLabel = "WHAT",
      description = "Kind and amount of the alcohol: methanol \"200 ml\".")
  private @Nullable List<String> alcohol;

  @Option(
      names = "--catalyst",
      arity = "2",
      paramLabel = "WHAT",
      description = "Lye and mass: NaOH \"3.5 g\".")
  private @Nullable List<String> catalyst;

  @Option(
      names = "--catalyst-purity",
      paramLabel = "SHARE",
      description = "Purity of that lye; left out, that of pellets is taken.")
  private @Nullable String catalystPurity;

  @Option(
      names = "--crude",
      paramLabel = "MASS",
      description = "The dark lower layer as drawn off.")
  private @Nullable String crude;

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      description = "How much of that layer went into this jar. Default: 100 %%")
  private @Nullable String share;

  @Option(
      names = "--acid",
      arity = "3",
      paramLabel = "WHAT",
      description =
          "Acid that split the soap, amount, strength: HCl \"40 ml\" \"10 %%\", or in mol/l.")
  private @Nullable List<String> acid;

  @Option(
      names = "--lye",
      arity = "3",
      paramLabel = "WHAT",
      description =
          "Lye that brought the pH back, amount, strength: NaOH \"5 ml\" \"4 %%\"; solid for pellets.")
  private @Nullable List<String> lye;

  @Option(
      names = "--fatty-layer-left",
      description = "The fatty acid that floated up was not taken off.")
  private boolean fattyLayerLeft;

  @Option(names = "--salt-out", paramLabel = "MASS", description = "Salt filtered off, dry.")
  private @Nullable String saltOut;

  @Option(
      names = "--alcohol-out",
      paramLabel = "AMOUNT",
      description = "Alcohol caught when it was driven off.")
  private @Nullable String alcoholOut;

  @Option(
      names = "--added",
      arity = "2",
      paramLabel = "WHAT",
      description =
          "Something added later: methanol \"50 ml\", magnesium-sulfate \"10 g\", adsorbent \"20 g\"."
              + " May be repeated.")
  private List<String> added = new ArrayList<>();

  @Option(
      names = "--taken-out",
      arity = "2",
      paramLabel = "WHAT",
      description = "How much of that was taken out again, dry. May be repeated.")
  private List<String> takenOut = new ArrayList<>();

  /**
   * The record.
   *
   * @param jarKg what the jar holds now (kg)
   * @return what was done
   */
  RecoveryLog log(Estimate jarKg) {
    List<String> oilWords = required("--oil", oil, "sunflower \"1 l\"");
    List<String> alcoholWords = required("--alcohol", alcohol, "methanol \"200 ml\"");
    List<String> catalystWords = required("--catalyst", catalyst, "NaOH \"3.5 g\"");
    Alcohol alcoholKind =
        KnownNames.find(
            "--alcohol",
            alcoholWords.get(0),
            List.of(Alcohol.values()),
            a -> List.of(a.tradeName()));
    return new RecoveryLog(
        oilBatch(oilWords),
        alcoholKind,
        TypedAmounts.massKg("--alcohol", alcoholWords.get(1), alcoholKind.kgPerM3()),
        catalystDose(catalystWords),
        Optional.ofNullable(crude).map(text -> TypedAmounts.massKg("--crude", text)),
        Estimate.exact(share == null ? 1 : TypedAmounts.share("--share", share)),
        Optional.ofNullable(acid).map(RecoveryOptions::acidDose),
        !fattyLayerLeft,
        saltOut == null ? NONE : TypedAmounts.massKg("--salt-out", saltOut),
        Optional.ofNullable(lye).map(RecoveryOptions::lyeDose),
        alcoholOut == null
            ? NONE
            : TypedAmounts.massKg("--alcohol-out", alcoholOut, alcoholKind.kgPerM3()),
        additions(),
        jarKg);
  }

  private OilBatch oilBatch(List<String> words) {
    OilKind kind =
        KnownNames.find(
            "--oil", words.get(0), List.of(OilKind.values()), o -> List.of(o.tradeName()));
    double density = (kind.densityKgPerM3().min() + kind.densityKgPerM3().max()) / 2;
    OilBatch batch = OilBatch.of(kind, TypedAmounts.massKg("--oil", words.get(1), density));
    if (acidValue == null) {
      return batch;
    }
    double value =
        TypedAmounts.number("--acid-value", acidValue, "an acid value in mg KOH/g, such as 2.5");
    return new OilBatch(batch.massKg(), batch.saponificationMgPerG(), Estimate.exact(value));
  }

  private Dose catalystDose(List<String> words) {
    Reagent kind = lyeKind("--catalyst", words.get(0));
    Estimate purity =
        catalystPurity == null
            ? kind.solidPurity()
            : Estimate.exact(TypedAmounts.share("--catalyst-purity", catalystPurity));
    return Dose.weighed(kind, TypedAmounts.massKg("--catalyst", words.get(1)), purity);
  }

  private static Dose acidDose(List<String> words) {
    Reagent kind =
        KnownNames.find(
            "--acid", words.get(0), Reagent.acids(), a -> List.of(a.tradeName(), a.formula()));
    if (TypedAmounts.isConcentration(words.get(2))) {
      return Dose.measured(
          kind,
          jug(TypedAmounts.volumeM3("--acid", words.get(1))),
          Estimate.exact(TypedAmounts.molPerM3("--acid", words.get(2))));
    }
    double strength = TypedAmounts.share("--acid", words.get(2));
    return Dose.weighed(
        kind,
        TypedAmounts.massKg("--acid", words.get(1), kind.solutionKgPerM3(strength)),
        Estimate.exact(strength));
  }

  private static Dose lyeDose(List<String> words) {
    Reagent kind = lyeKind("--lye", words.get(0));
    if (words.get(2).equals(SOLID)) {
      return Dose.weighed(kind, TypedAmounts.massKg("--lye", words.get(1)), kind.solidPurity());
    }
    if (TypedAmounts.isConcentration(words.get(2))) {
      return Dose.measured(
          kind,
          jug(TypedAmounts.volumeM3("--lye", words.get(1))),
          Estimate.exact(TypedAmounts.molPerM3("--lye", words.get(2))));
    }
    double strength = TypedAmounts.share("--lye", words.get(2));
    return Dose.weighed(
        kind,
        TypedAmounts.massKg("--lye", words.get(1), kind.solutionKgPerM3(strength)),
        Estimate.exact(strength));
  }

  private List<LaterAddition> additions() {
    List<LaterAddition> all = new ArrayList<>();
    for (int i = 0; i < added.size(); i += 2) {
      LaterAddition.Agent agent = agent("--added", added.get(i));
      Estimate out = NONE;
      for (int j = 0; j < takenOut.size(); j += 2) {
        if (agent("--taken-out", takenOut.get(j)) == agent) {
          out = massOf("--taken-out", agent, takenOut.get(j + 1));
        }
      }
      all.add(new LaterAddition(agent, massOf("--added", agent, added.get(i + 1)), out));
    }
    for (int j = 0; j < takenOut.size(); j += 2) {
      LaterAddition.Agent agent = agent("--taken-out", takenOut.get(j));
      if (all.stream().noneMatch(a -> a.agent() == agent)) {
        throw CommandFailure.wrongInput(
            "--taken-out: "
                + agent.tradeName()
                + " given, but none was added; write --added "
                + agent.tradeName().replace(' ', '-')
                + " with its amount");
      }
    }
    return all;
  }

  private static Estimate massOf(String option, LaterAddition.Agent agent, String text) {
    return switch (agent) {
      case METHANOL -> TypedAmounts.massKg(option, text, Alcohol.METHANOL.kgPerM3());
      case ETHANOL -> TypedAmounts.massKg(option, text, Alcohol.ETHANOL.kgPerM3());
      case WATER -> TypedAmounts.massKg(option, text, 998);
      default -> TypedAmounts.massKg(option, text);
    };
  }

  private static LaterAddition.Agent agent(String option, String typed) {
    return KnownNames.find(
        option, typed, List.of(LaterAddition.Agent.values()), a -> List.of(a.tradeName()));
  }

  private static Reagent lyeKind(String option, String typed) {
    return KnownNames.find(option, typed, Reagent.lyes(), l -> List.of(l.tradeName(), l.formula()));
  }

  private static Estimate jug(double m3) {
    return new Estimate(m3, TypedAmounts.JUG_RELATIVE_SD * m3);
  }

  private static List<String> required(
      String option, @Nullable List<String> words, String example) {
    if (words == null) {
      throw CommandFailure.wrongInput(
          option
              + ": not given, but a recovered jar needs it; write it like "
              + option
              + " "
              + example);
    }
    return words;
  }
}
