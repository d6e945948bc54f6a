package starchfilm.request;

import static starchfilm.files.amount.Dimension.CONCENTRATION;
import static starchfilm.files.amount.Dimension.SHARE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.amount.KnownName;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.LaterAddition.Agent;
import starchfilm.jar.recovery.OilBatch;
import starchfilm.jar.recovery.OilKind;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;

/** The record of how a jar was recovered from oil. */
final class RecoveryRecord {

  private static final Estimate NONE = Estimate.exact(0);
  private static final String SOLID = "solid";

  private RecoveryRecord() {}

  /** The record of a jar that now holds this mass (kg); empty where there is a mistake in it. */
  static Optional<RecoveryLog> read(EntryReader in, Estimate jarKg) {
    return in.made(() -> log(in, jarKg));
  }

  private static RecoveryLog log(EntryReader in, Estimate jarKg) {
    in.require(
        "record.oil", "kind and amount, such as sunflower \"1 l\"; a recovered jar needs it");
    in.require(
        "record.alcohol", "kind and amount, such as methanol \"200 ml\"; a recovered jar needs it");
    in.require("record.catalyst", "lye and mass, such as NaOH \"3.5 g\"; a recovered jar needs it");
    Optional<OilBatch> oil = oil(in);
    Optional<Alcohol> alcohol = in.choice("record.alcohol", List.of(Alcohol.values()));
    double alcoholKgPerM3 = alcohol.orElse(Alcohol.METHANOL).kgPerM3();
    Optional<Estimate> alcoholKg =
        in.all("record.alcohol", words -> Quantities.massKg(words.get(1), alcoholKgPerM3));
    Optional<Dose> catalyst = catalyst(in);
    Optional<Estimate> crude = in.one("record.crude", Quantities::massKg);
    double share = in.one("record.share", SHARE::si, 1.0);
    Optional<Dose> acid = in.all("record.acid", words -> dose(words, Reagent.acids()));
    Optional<Dose> lye = in.all("record.lye", words -> dose(words, Reagent.lyes()));
    Estimate saltOut = in.one("record.salt-out", Quantities::massKg, NONE);
    Estimate alcoholOut =
        in.one("record.alcohol-out", typed -> Quantities.massKg(typed, alcoholKgPerM3), NONE);
    List<LaterAddition> additions = additions(in);
    return new RecoveryLog(
        oil.orElseThrow(),
        alcohol.orElseThrow(),
        alcoholKg.orElseThrow(),
        catalyst.orElseThrow(),
        crude,
        Estimate.exact(share),
        acid,
        !in.has("record.fatty-layer-left"),
        saltOut,
        lye,
        alcoholOut,
        additions,
        jarKg);
  }

  private static Optional<OilBatch> oil(EntryReader in) {
    Optional<Estimate> acidValue =
        in.one(
            "record.acid-value",
            typed ->
                Estimate.exact(Quantities.number(typed, "an acid value in mg KOH/g, such as 2.5")));
    Optional<OilBatch> oil =
        in.all(
            "record.oil",
            words -> {
              OilKind kind = EntryReader.chosen(words.get(0), List.of(OilKind.values()));
              double density = (kind.densityKgPerM3().min() + kind.densityKgPerM3().max()) / 2;
              OilBatch batch = OilBatch.of(kind, Quantities.massKg(words.get(1), density));
              return new OilBatch(
                  batch.massKg(),
                  batch.saponificationMgPerG(),
                  acidValue.orElse(batch.acidMgPerG()));
            });
    if (acidValue.isEmpty()) {
      oil.ifPresent(
          batch ->
              in.assume(
                  "an acid value of the oil of %s mg KOH/g, as usual for its kind"
                      .formatted(Figures.of(batch.acidMgPerG().value(), 2))));
    }
    return oil;
  }

  private static Optional<Dose> catalyst(EntryReader in) {
    Optional<Double> purity = in.one("record.catalyst-purity", SHARE::si);
    return in.all(
        "record.catalyst",
        words -> {
          Reagent kind = reagent(words.get(0), Reagent.lyes());
          if (purity.isEmpty()) {
            in.assume(
                "%s pellets of %s %% purity"
                    .formatted(kind.tradeName(), Figures.percent(kind.solidPurity().value())));
          }
          return Dose.weighed(
              kind,
              Quantities.massKg(words.get(1)),
              purity.map(Estimate::exact).orElse(kind.solidPurity()));
        });
  }

  /** Kind, amount and strength of an acid or a lye. */
  private static Dose dose(List<String> words, List<Reagent> kinds) {
    Reagent kind = reagent(words.get(0), kinds);
    String amount = words.get(1);
    String strength = words.get(2);
    if (kind.isLye() && strength.equals(SOLID)) {
      return Dose.weighed(kind, Quantities.massKg(amount), kind.solidPurity());
    }
    if (Quantities.isConcentration(strength)) {
      return Dose.measured(
          kind, Quantities.jugM3(amount), Estimate.exact(CONCENTRATION.si(strength)));
    }
    double share = SHARE.si(strength);
    return Dose.weighed(
        kind, Quantities.massKg(amount, kind.solutionKgPerM3(share)), Estimate.exact(share));
  }

  private static List<LaterAddition> additions(EntryReader in) {
    Map<Agent, Estimate> out = in.all("record.taken-out", RecoveryRecord::masses).orElse(Map.of());
    Map<Agent, Estimate> added = in.all("record.added", RecoveryRecord::masses).orElse(Map.of());
    for (Agent taken : out.keySet()) {
      if (!added.containsKey(taken)) {
        in.refuse(
            "record.taken-out",
            "%s given, but none was added; write %s %s with its amount"
                .formatted(
                    taken.tradeName(),
                    in.quoted("record.added"),
                    taken.tradeName().replace(' ', '-')));
      }
    }
    return added.entrySet().stream()
        .map(
            one ->
                new LaterAddition(
                    one.getKey(), one.getValue(), out.getOrDefault(one.getKey(), NONE)))
        .toList();
  }

  /** The mass of each agent (kg), which may be written in several parts. */
  private static Map<Agent, Estimate> masses(List<String> words) {
    Map<Agent, Estimate> masses = new LinkedHashMap<>();
    for (int i = 0; i + 1 < words.size(); i += 2) {
      Agent agent = EntryReader.chosen(words.get(i), List.of(Agent.values()));
      String amount = words.get(i + 1);
      Estimate massKg =
          switch (agent) {
            case METHANOL -> Quantities.massKg(amount, Alcohol.METHANOL.kgPerM3());
            case ETHANOL -> Quantities.massKg(amount, Alcohol.ETHANOL.kgPerM3());
            case WATER -> Quantities.massKg(amount, Composition.WATER_AT_20C_KG_PER_M3);
            default -> Quantities.massKg(amount);
          };
      masses.merge(agent, massKg, Estimate::plus);
    }
    return masses;
  }

  private static Reagent reagent(String typed, List<Reagent> kinds) {
    return KnownName.find(typed, kinds, one -> List.of(one.tradeName(), one.formula()));
  }
}
