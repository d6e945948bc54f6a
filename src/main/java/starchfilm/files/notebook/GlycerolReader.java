package starchfilm.files.notebook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Words;
import starchfilm.files.json.Located;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Named;

/** Reads {@code recipe.glycerol}. What is assumed where nothing is noted is judged, no source. */
final class GlycerolReader {

  private static final Estimate ASSUMED_PER_STARCH = Estimate.between(0.15, 0.5);
  private static final double MOST_SALT_ASSUMED = 0.02;

  private static final GlycerolStock NONE = new GlycerolStock(Estimate.exact(1), Estimate.exact(0));

  /** What a kept jar says for itself. */
  private static final List<String> OF_THE_JAR = List.of("purity_pct", "salt_pct", "origin");

  private GlycerolReader() {}

  /** What went into the pot; a kept jar is looked for beside the file. */
  static GlycerolPortion read(ObjectReader recipe, double starchKg, Path file) {
    Optional<ObjectReader> found = recipe.section("glycerol");
    if (found.isEmpty()) {
      if (!recipe.has("glycerol")) {
        recipe.notRecorded("glycerol");
      }
      return new GlycerolPortion(Estimate.exact(0), NONE);
    }
    ObjectReader section = found.get();
    boolean isNone =
        section.value("mass_g").map(Located::shown).filter(g -> g.matches("0[.0]*")).isPresent();
    if (isNone && OF_THE_JAR.stream().noneMatch(section::has) && !section.has("jar")) {
      // Of no glycerol, nothing about a jar is assumed.
      return new GlycerolPortion(Estimate.exact(0), NONE);
    }
    GlycerolStock stock = section.has("jar") ? kept(section, file) : stock(section);
    Estimate assumed = ASSUMED_PER_STARCH.times(starchKg);
    Estimate massKg =
        Volumes.massKg(
            section,
            stock.kgPerM3(),
            assumed,
            Words.grams(assumed) + ", 15 to 50 g per 100 g of starch");
    return new GlycerolPortion(massKg, stock);
  }

  private static GlycerolStock kept(ObjectReader section, Path file) {
    String name = section.text("jar").orElse("");
    Path folder = file.toAbsolutePath().resolveSibling(".").normalize();
    Path jarFile = KeptJar.file(folder, KeptJar.isName(name) ? name : "");
    section.findings().beside(jarFile);
    if (!Files.isRegularFile(jarFile)) {
      section.fault(
          "jar",
          '"' + name + '"',
          KeptJar.allowed(folder),
          "keep the jar with assay --keep, or write purity_pct, salt_pct and origin instead");
      return NONE;
    }
    Findings ofJar = new Findings(jarFile.getFileName().toString());
    Optional<KeptJar> jar = KeptJar.read(jarFile, ofJar);
    if (jar.isEmpty()) {
      String fault = ofJar.faults().get(0).sentence();
      section.fault("jar", "a jar whose file has a fault (" + fault + ")", "", "fix that file");
    }
    for (String key : OF_THE_JAR) {
      boolean agrees =
          key.equals("origin")
              && section.oneOf(key).equals(jar.map(one -> Named.of(one.stock().origin())));
      if (section.has(key) && !agrees) {
        section.fault(
            key,
            key + " beside the jar " + name + ", whose file says it",
            "",
            "leave one of the two out");
      }
    }
    return jar.map(KeptJar::stock).orElse(NONE);
  }

  /** What a jar holds by its own fields. */
  static GlycerolStock stock(ObjectReader section) {
    Optional<Estimate> purity = section.amount("purity_pct");
    Estimate purityFraction = purity.orElseGet(() -> section.assumed("purity_pct"));
    double rest = Math.max(0, 1 - purityFraction.value());
    Optional<Estimate> salt = section.amount("salt_pct");
    GlycerolOrigin origin = origin(section, salt);
    double mostSalt = Math.min(MOST_SALT_ASSUMED, rest);
    Estimate saltFraction = salt.orElse(Estimate.between(0, mostSalt));
    if (salt.isEmpty() && rest > MOST_SALT_ASSUMED) {
      section.notRecorded("salt_pct", "0 to " + Words.number(100 * mostSalt) + " %");
    }
    double sum = purityFraction.value() + saltFraction.value();
    if (sum > 1 + 1e-9) {
      if (purity.isPresent()) {
        section.fault(
            "salt_pct",
            Words.number(100 * sum) + " % of glycerol and salt together",
            "at most 100 %",
            "lower purity_pct or salt_pct; what is left is water");
        return NONE;
      }
      return new GlycerolStock(
          new Estimate(1 - saltFraction.value(), purityFraction.sd()), saltFraction, origin);
    }
    return new GlycerolStock(purityFraction, saltFraction, origin);
  }

  private static GlycerolOrigin origin(ObjectReader section, Optional<Estimate> salt) {
    Optional<GlycerolOrigin> stated = section.choice("origin", GlycerolOrigin.values());
    boolean saltStated = salt.filter(fraction -> fraction.value() > 0).isPresent();
    if (stated.equals(Optional.of(GlycerolOrigin.BOUGHT)) && saltStated) {
      section.fault(
          "origin",
          "bought, beside salt in the jar",
          "recovered or unknown with salt",
          "write \"recovered\", or take salt_pct out: glycerol bought with a label holds none");
    }
    return GlycerolOrigin.of(stated, saltStated);
  }
}
