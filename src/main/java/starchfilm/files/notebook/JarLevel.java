package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.G_PER_KG;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Notice;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.findings.Words;
import starchfilm.files.json.Located.Place;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Plural;

/**
 * The content left in a kept jar after the trials beside it that took from it.
 *
 * @param jar the jar
 * @param taken the trials that took from it since it was weighed
 * @param planned those that name it but are not poured yet
 * @param earlier those poured before it was weighed, which do not count
 */
public record JarLevel(KeptJar jar, List<Trial> taken, List<Trial> planned, List<Trial> earlier) {
  public JarLevel {
    taken = List.copyOf(taken);
    planned = List.copyOf(planned);
    earlier = List.copyOf(earlier);
  }

  /**
   * Counts.
   *
   * @param jar the jar
   * @param trials trials of any folder; those beside the jar count
   * @return what is left
   */
  public static JarLevel of(KeptJar jar, List<Trial> trials) {
    Predicate<Trial> before =
        trial ->
            trial.pouredAt().isPresent()
                && jar.weighedAt().filter(trial.pouredAt().get()::isBefore).isPresent();
    List<Trial> naming = trials.stream().filter(trial -> takesFrom(trial, jar)).toList();
    return new JarLevel(
        jar,
        naming.stream().filter(trial -> trial.hasHistory() && !before.test(trial)).toList(),
        naming.stream().filter(trial -> !trial.hasHistory()).toList(),
        naming.stream().filter(before).toList());
  }

  private static boolean takesFrom(Trial trial, KeptJar jar) {
    return trial.recipe().glycerol().stock().jar().equals(jar.name())
        && folder(trial.file()).equals(folder(jar.file()));
  }

  private static Path folder(Path file) {
    return file.toAbsolutePath().normalize().resolveSibling(".").normalize();
  }

  /**
   * The mass left.
   *
   * @return kg, with the doubt of the jar and of all that was taken; below 0 where more was taken
   *     than it held
   */
  public Estimate leftKg() {
    return jar.massKg().minus(massKg(taken));
  }

  /**
   * The mass left, as a range that holds in 8 cases of 10.
   *
   * @return kg, nowhere below 0
   */
  public Band leftBandKg() {
    return bandKg(leftKg());
  }

  private static Band bandKg(Estimate mass) {
    double half = Band.Z90 * mass.sd();
    return new Band(
        Math.max(0, mass.value() - half),
        Math.max(0, mass.value()),
        Math.max(0, mass.value() + half));
  }

  /**
   * A sentence that tells what is left, and how that is known.
   *
   * @return such as {@code Jar first-batch: 205 g left (200 to 210 g). It held 250 g on 2026-11-27;
   *     3 trials took 45 g.}
   */
  public String sentence() {
    String on = jar.weighedAt().map(at -> " on " + at.toLocalDate()).orElse("");
    String took =
        taken.isEmpty()
            ? "no trial took from it."
            : "%s took %s."
                .formatted(Plural.of(taken.size(), "trial"), Words.grams(massKg(taken).value()));
    String would =
        planned.isEmpty()
            ? ""
            : " %s not poured yet would take %s."
                .formatted(
                    Plural.of(planned.size(), "trial"), Words.grams(massKg(planned).value()));
    String not =
        earlier.isEmpty()
            ? ""
            : " " + Plural.of(earlier.size(), "trial") + " poured before that not counted.";
    return "Jar %s: %s left. It held %s%s; "
            .formatted(jar.name(), left(), grams(bandKg(jar.massKg())), on)
        + (took + would + not);
  }

  /**
   * The mass left, in words.
   *
   * @return such as {@code 205 g (200 to 210 g)}
   */
  public String left() {
    return grams(leftBandKg());
  }

  /**
   * Whether the jar holds too little for a trial.
   *
   * @param trial a trial; any that does not take from it is passed over
   * @return what is odd, where it took or would take more than there was
   */
  Optional<Notice> shortFor(Trial trial) {
    int count = taken.indexOf(trial);
    if (count < 0 && !planned.contains(trial)) {
      return Optional.empty();
    }
    JarLevel found =
        new JarLevel(jar, count < 0 ? taken : taken.subList(0, count), List.of(), List.of());
    return found
        .tooLittleFor(trial.recipe().glycerol().massKg().value())
        .map(text -> new Notice(PlainLine.of(trial.file()), Place.of("recipe.glycerol.jar"), text));
  }

  /**
   * Returns whether an amount is more than is left.
   *
   * @param kg what is to be taken (kg)
   * @return a clause that says so; empty where there is enough
   */
  public Optional<String> tooLittleFor(double kg) {
    String text =
        "%s out of the jar %s, which has %s left for it; weigh the jar again, or take less"
            .formatted(Words.grams(kg), jar.name(), left());
    return Optional.of(text).filter(told -> kg > leftKg().value() * (1 + 1e-9));
  }

  private static Estimate massKg(List<Trial> trials) {
    return trials.stream()
        .map(trial -> trial.recipe().glycerol().massKg())
        .reduce(Estimate.exact(0), Estimate::plus);
  }

  private static String grams(Band kg) {
    String middle = Words.number(kg.middle() * G_PER_KG);
    String low = Words.number(kg.low() * G_PER_KG);
    String high = Words.number(kg.high() * G_PER_KG);
    return low.equals(high) ? middle + " g" : middle + " g (" + low + " to " + high + " g)";
  }
}
