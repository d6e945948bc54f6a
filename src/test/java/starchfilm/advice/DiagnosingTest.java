package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.drying.Milestone;

/** How well a cause explains a fault. */
class DiagnosingTest {
  private static final RuleBook BOOK = RuleBook.packed();
  private static final Diagnosing DIAGNOSING = new Diagnosing(BOOK);

  static Stream<FaultContext> scenes() {
    return MadeUpTrials.drawn(20261127, 12).stream()
        .flatMap(
            trial ->
                trial.seen().faults().stream().map(fault -> SeenFaults.on(trial.casting(), fault)));
  }

  /** The rule at the head of the class, worked once more from what the model says. */
  @ParameterizedTest
  @MethodSource("scenes")
  void everyCauseThatExplainsThreeTwentiethsIsNamedWithWhatItExplains(FaultContext scene) {
    Map<Cause, Double> expected = new EnumMap<>(Cause.class);
    for (Rule rule : BOOK.rulesFor(scene.fault().kind(), scene.fault().where())) {
      boolean told = scene.seenAtS().isPresent() || !rule.heldAgainst().needsTime();
      if (told && rule.read(scene).told()) {
        double support = support(rule, scene);
        if (support >= 0.15) {
          expected.merge(rule.cause(), support, Math::max);
        }
      }
    }

    Map<Cause, Double> named = new EnumMap<>(Cause.class);
    DIAGNOSING
        .of(scene)
        .suspicions()
        .forEach(suspicion -> named.put(suspicion.cause(), suspicion.support()));

    assertThat(named.keySet()).isEqualTo(expected.keySet());
    expected.forEach(
        (cause, support) -> assertThat(named.get(cause)).isCloseTo(support, within(1e-9)));
  }

  private static double support(Rule rule, FaultContext scene) {
    double excess = rule.read(scene).excess();
    if (!rule.isRerun()) {
      return share(excess);
    }
    double trouble = rule.heldAgainst().trouble(scene);
    Optional<PutRight> right = rule.cause().putRight(scene);
    if (right.isEmpty() || trouble == 0) {
      return 0;
    }
    double after = rule.heldAgainst().trouble(scene.with(scene.outlook().of(right.get().setup())));
    return Math.min(1, trouble) * share((trouble - after) / trouble) * share(excess + 0.5);
  }

  private static double share(double value) {
    return Math.min(1, Math.max(0, value));
  }

  /** Thinner always dries sooner, yet a pour that leaves 100 µm is not to blame for a wet plate. */
  @Test
  void aFigureWellWithinTheHarmlessIsNoCauseWhateverTheRerunSays() {
    Casting thin = Castings.USUAL.pouredTo(1.4e-3);
    FaultContext early = wetAfterHalfItsTime(thin);
    assertThat(DIAGNOSING.of(early).suspicions())
        .extracting(Suspicion::cause)
        .doesNotContain(Cause.POURED_TOO_THICK);
    assertThat(DIAGNOSING.of(wetAfterHalfItsTime(Castings.USUAL)).suspicions())
        .extracting(Suspicion::cause)
        .contains(Cause.POURED_TOO_THICK);
  }

  private static FaultContext wetAfterHalfItsTime(Casting casting) {
    FaultContext scene = SeenFaults.on(casting, SeenFaults.fault(FaultKind.STILL_WET));
    return scene.lookedAtS(scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH) / 2);
  }

  @Test
  void saysWhatTheModelExpected() {
    assertThat(sticky(0.6)).startsWith("The model expects this: ");
    assertThat(sticky(0.43)).startsWith("The model expects this: ");
    assertThat(sticky(0.40)).startsWith("The model says that this is possible: ");
    assertThat(sticky(0.2)).startsWith("The model does not expect this: ");
  }

  private static String sticky(double glycerol) {
    return DIAGNOSING
        .of(
            SeenFaults.on(
                SeenFaults.usual(Setting.GLYCEROL, glycerol), SeenFaults.fault(FaultKind.STICKY)))
        .model();
  }

  @ParameterizedTest
  @CsvSource({
    "1, explains it well",
    "0.65, explains it well",
    "0.64, explains part of it",
    "0.35, explains part of it",
    "0.34, may add to it",
  })
  void supportIsToldInThreeDegrees(double support, String words) {
    Rule any = BOOK.rules().get(0);
    assertThat(new Suspicion(any, support, "").degree()).isEqualTo(words);
  }
}
