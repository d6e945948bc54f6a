package starchfilm.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import starchfilm.evidence.Estimate;
import starchfilm.ingredient.StarchKind;
import starchfilm.json.Located;
import starchfilm.recipe.Cook;
import starchfilm.recipe.GlycerolPortion;
import starchfilm.recipe.GlycerolStock;
import starchfilm.recipe.Recipe;
import starchfilm.recipe.StarchPortion;
import starchfilm.recipe.VinegarPortion;

/**
 * Reads {@code recipe} and {@code cook}: what went into the pot.
 *
 * <p>Every assumption for what is not recorded stands here, and each is judged, no source. All are
 * wide, so that they show in the bands.
 */
final class RecipeReader {
  private static final String UNKNOWN_KIND = "unknown";
  private static final double PERCENT = 1e-2;
  private static final double ZERO_CELSIUS_K = 273.15;
  private static final double MINUTE_S = 60;

  private static final Allowed STARCH_MASS =
      Allowed.above(0, 100_000, "g", "write the grams weighed");
  private static final Allowed MASS = Allowed.between(0, 100_000, "g", "write the grams weighed");
  private static final Allowed VOLUME =
      Allowed.between(0, 100_000, "ml", "write the millilitres measured");
  private static final Allowed MOISTURE =
      Allowed.percent(30, "write the powder's moisture in per cent, such as 12");
  private static final Allowed PURITY =
      Allowed.percent(100, "write the glycerol in the jar in per cent, such as 85");
  private static final Allowed SALT =
      Allowed.between(0, 100, "%", "write the salt in the jar in per cent, such as 3");
  private static final Allowed ACIDITY =
      Allowed.percent(100, "write the acid on the label in per cent, such as 5");
  private static final Allowed MINUTES =
      Allowed.between(0, 600, "min", "write the minutes at the top temperature");
  private static final Allowed TOP_C =
      Allowed.between(20, 130, "\u00B0C", "write the highest temperature in degrees Celsius");

  private static final Estimate COOK_MINUTES = Estimate.between(5, 20);
  private static final Estimate COOK_TOP_C = Estimate.between(85, 98);
  private static final double LEAST_WATER_LOST = 0.02;
  private static final double MOST_WATER_LOST = 0.12;
  private static final Estimate GLYCEROL_PER_STARCH = Estimate.between(0.15, 0.5);
  private static final double POT_KG = 0.5;

  private final Findings findings;
  private final Scale scale;
  private final Volumes volumes;

  RecipeReader(Findings findings, Scale scale) {
    this.findings = findings;
    this.scale = scale;
    this.volumes = new Volumes(findings, scale);
  }

  /** One starch as noted, its mass perhaps missing. */
  private record Noted(Section section, StarchKind kind, Amount mass, Estimate moisture) {}

  /**
   * Reads the recipe.
   *
   * @param trial the whole trial
   * @return the recipe, or empty where the file gives none
   */
  Optional<Recipe> read(Section trial) {
    if (!trial.has("recipe")) {
      findings.fault(
          trial.place(),
          "a file without the field recipe",
          "a trial with at least recipe and, in it, starch",
          "add the recipe, or move the file to another folder if it is no trial");
      return Optional.empty();
    }
    Optional<Section> found = trial.section("recipe", "write {\"starch\": [..], ..}");
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Section recipe = found.get();
    List<Noted> noted = starches(recipe);
    if (noted.isEmpty()) {
      return Optional.empty();
    }
    Optional<Section> water = recipe.section("water", "write {\"mass_g\": 400}");
    Optional<Estimate> waterKg =
        water.flatMap(section -> volumes.massKg(section, MASS, VOLUME, Volumes.WATER));
    List<StarchPortion> starches = weighedStarches(noted, waterKg);
    double starchKg = starches.stream().mapToDouble(s -> s.massKg().value()).sum();
    Estimate waterTaken = waterKg.orElseGet(() -> assumedWater(recipe, noted, starchKg));
    GlycerolPortion glycerol = glycerol(recipe, starchKg);
    VinegarPortion vinegar = vinegar(recipe, waterTaken);
    Estimate salt = scale.kg(recipe.amount("salt_g", MASS), Estimate.exact(0));
    Cook cook = cook(trial, waterTaken, waterTaken.value() + vinegar.massKg().value());
    return Optional.of(new Recipe(starches, glycerol, vinegar, waterTaken, salt, cook));
  }

  private List<Noted> starches(Section recipe) {
    List<Noted> noted = new ArrayList<>();
    for (Section section : recipe.sections("starch", "write {\"kind\": .., \"mass_g\": ..}")) {
      StarchKind kind = kind(section);
      Amount mass = section.amount("mass_g", STARCH_MASS);
      Amount moisture = section.amount("moisture_pct", MOISTURE);
      Estimate usual = new Estimate(kind.powderMoistureFraction(), kind.powderMoistureSd());
      if (!moisture.isKnown()) {
        findings.notRecorded(
            section.path("moisture_pct"),
            Words.percent(usual) + ", as " + kind + " starch usually holds",
            "dry starch uncertain by " + Words.percentSpread(usual));
      }
      Estimate fraction =
          moisture.isKnown() ? moisture.or(Estimate.exact(0)).times(PERCENT) : usual;
      noted.add(new Noted(section, kind, mass, fraction));
    }
    if (noted.isEmpty() && findings.faults().isEmpty()) {
      findings.fault(
          recipe.placeOf("starch"),
          "a recipe without starch",
          "at least one starch",
          "add \"starch\": [{\"kind\": \"potato\", \"mass_g\": 20}]");
    }
    return noted;
  }

  private StarchKind kind(Section section) {
    List<String> words = new ArrayList<>();
    Arrays.stream(StarchKind.values()).map(StarchKind::tradeName).forEach(words::add);
    words.add(UNKNOWN_KIND);
    boolean given = section.has("kind");
    Optional<String> word = section.oneOf("kind", words);
    if (word.isPresent() && !word.get().equals(UNKNOWN_KIND)) {
      return Arrays.stream(StarchKind.values())
          .filter(kind -> kind.tradeName().equals(word.get()))
          .findFirst()
          .orElseThrow();
    }
    if (!given || word.isPresent()) {
      findings.notRecorded(
          section.path("kind"),
          StarchKind.CORN + " starch",
          "kinds differ in strength, stretch and gel; the film forecast may be of another film");
    }
    return StarchKind.CORN;
  }

  private List<StarchPortion> weighedStarches(List<Noted> noted, Optional<Estimate> waterKg) {
    List<StarchPortion> portions = new ArrayList<>();
    long missing = noted.stream().filter(n -> !n.mass().isKnown()).count();
    for (Noted starch : noted) {
      Estimate assumed = Estimate.exact(0);
      if (!starch.mass().isKnown()) {
        double wholeKg = waterKg.map(Estimate::value).orElse(POT_KG);
        double powder = (1 - starch.moisture().value()) * missing;
        double from = starch.kind().usualCast().min();
        double to = starch.kind().usualCast().max();
        assumed =
            Estimate.between(
                wholeKg * from / (1 - from) / powder, wholeKg * to / (1 - to) / powder);
        findings.notRecorded(
            starch.section().path("mass_g"),
            Words.grams(assumed) + ", as " + starch.kind() + " starch is usually cast",
            "dry thickness and drying time are known only within this range");
      }
      portions.add(
          new StarchPortion(starch.kind(), scale.kg(starch.mass(), assumed), starch.moisture()));
    }
    return portions;
  }

  private Estimate assumedWater(Section recipe, List<Noted> noted, double starchKg) {
    StarchKind kind = noted.get(0).kind();
    double dryKg = starchKg * (1 - noted.get(0).moisture().value());
    boolean nothingKnown = noted.stream().noneMatch(n -> n.mass().isKnown());
    Estimate water =
        nothingKnown
            ? Estimate.exact(POT_KG)
            : Estimate.between(
                dryKg * (1 / kind.usualCast().max() - 1), dryKg * (1 / kind.usualCast().min() - 1));
    findings.notRecorded(
        recipe.path("water"),
        Words.grams(water) + ", as " + kind + " starch is usually cast",
        "dry thickness and drying time are known only within this range");
    return water;
  }

  private GlycerolPortion glycerol(Section recipe, double starchKg) {
    Optional<Section> found =
        recipe.section("glycerol", "write {\"mass_g\": 6, \"purity_pct\": 99}");
    if (found.isEmpty()) {
      if (!recipe.has("glycerol")) {
        findings.notRecorded(
            recipe.path("glycerol"), "none", "with glycerol the film is softer than forecast");
      }
      return new GlycerolPortion(
          Estimate.exact(0), new GlycerolStock(Estimate.exact(1), Estimate.exact(0)));
    }
    Section section = found.get();
    Amount purity = section.amount("purity_pct", PURITY);
    Amount salt = section.amount("salt_pct", SALT);
    Estimate purityFraction = purity.or(Estimate.between(80, 100)).times(PERCENT);
    if (!purity.isKnown()) {
      findings.notRecorded(
          section.path("purity_pct"),
          "80 to 100 % glycerol",
          "stretch and stickiness are known only within this range");
    }
    GlycerolStock stock = stock(section, purityFraction, purity, salt);
    Optional<Estimate> mass =
        volumes.massKg(section, MASS, VOLUME, Volumes.aqueousGlycerol(purityFraction.value()));
    Estimate massKg = mass.orElseGet(() -> GLYCEROL_PER_STARCH.times(starchKg));
    if (mass.isEmpty()) {
      findings.notRecorded(
          section.path("mass_g"),
          Words.grams(massKg) + ", 15 to 50 g a hundred of starch",
          "the film may turn out brittle or sticky; weigh the glycerol first of all");
    }
    return new GlycerolPortion(massKg, stock);
  }

  private GlycerolStock stock(
      Section section, Estimate purityFraction, Amount purity, Amount salt) {
    double rest = Math.max(0, 1 - purityFraction.value());
    Estimate saltFraction;
    if (salt.isKnown()) {
      saltFraction = salt.or(Estimate.exact(0)).times(PERCENT);
    } else {
      saltFraction = Estimate.between(0, Math.min(0.02, rest));
      if (rest > 0.02) {
        findings.notRecorded(
            section.path("salt_pct"),
            "0 to " + Words.number(100 * Math.min(0.02, rest)) + " %",
            "salt draws water: in damp air the film may be wetter than forecast");
      }
    }
    double sum = purityFraction.value() + saltFraction.value();
    if (sum > 1 + 1e-9) {
      if (purity.isKnown()) {
        Located.Place place = section.placeOf("salt_pct");
        findings.fault(
            place,
            Words.number(100 * sum) + " % of glycerol and salt together",
            "at most 100 %",
            "lower purity_pct or salt_pct; what is left is water");
        return new GlycerolStock(Estimate.exact(1), Estimate.exact(0));
      }
      return new GlycerolStock(
          new Estimate(1 - saltFraction.value(), purityFraction.sd()), saltFraction);
    }
    return new GlycerolStock(purityFraction, saltFraction);
  }

  private VinegarPortion vinegar(Section recipe, Estimate waterKg) {
    Optional<Section> found =
        recipe.section("vinegar", "write {\"mass_g\": 10, \"acidity_pct\": 5}");
    if (found.isEmpty()) {
      return new VinegarPortion(Estimate.exact(0), Estimate.exact(0.05));
    }
    Section section = found.get();
    Amount acidity = section.amount("acidity_pct", ACIDITY);
    Estimate acid = acidity.or(Estimate.between(4, 8)).times(PERCENT);
    if (!acidity.isKnown()) {
      findings.notRecorded(
          section.path("acidity_pct"), "4 to 8 % acid", "how far the acid cuts the chains");
    }
    Optional<Estimate> mass = volumes.massKg(section, MASS, VOLUME, Volumes.vinegar(acid.value()));
    Estimate massKg = mass.orElseGet(() -> Estimate.between(0, 0.1 * waterKg.value()));
    if (mass.isEmpty()) {
      findings.notRecorded(
          section.path("mass_g"),
          Words.grams(massKg),
          "how far the acid cuts the chains, and a little water");
    }
    return new VinegarPortion(massKg, acid);
  }

  private Cook cook(Section trial, Estimate waterKg, double mostKg) {
    Optional<Section> found =
        trial.section("cook", "write {\"minutes\": 10, \"top_C\": 92, \"water_lost_g\": 25}");
    Amount missing = Amount.Missing.NOT_RECORDED;
    Amount minutes = found.map(cook -> cook.amount("minutes", MINUTES)).orElse(missing);
    Amount top = found.map(cook -> cook.amount("top_C", TOP_C)).orElse(missing);
    Amount lost = found.map(cook -> cook.amount("water_lost_g", MASS)).orElse(missing);
    Estimate lostKg =
        scale.kg(
            lost,
            Estimate.between(
                LEAST_WATER_LOST * waterKg.value(), MOST_WATER_LOST * waterKg.value()));
    if (!minutes.isKnown()) {
      findings.notRecorded("cook.minutes", "5 to 20 min", "how far the acid cuts the chains");
    }
    if (!top.isKnown()) {
      findings.notRecorded(
          "cook.top_C", "85 to 98 \u00B0C", "whether every grain gelatinised, and the acid's work");
    }
    if (!lost.isKnown()) {
      findings.notRecorded(
          "cook.water_lost_g",
          Words.grams(lostKg) + ", 2 to 12 % of the water",
          "the paste may be thicker or thinner; weigh the pot before and after");
    }
    if (lost.isKnown() && lostKg.value() >= mostKg) {
      findings.fault(
          found.orElseThrow().placeOf("water_lost_g"),
          Words.number(lostKg.value() * 1000) + " g of water lost in the pot",
          "less than the " + Words.number(mostKg * 1000) + " g that went in",
          "weigh the pot before and after the cook and write the difference");
    }
    return new Cook(
        minutes.or(COOK_MINUTES).times(MINUTE_S),
        top.or(COOK_TOP_C).plus(Estimate.exact(ZERO_CELSIUS_K)),
        lostKg);
  }
}
