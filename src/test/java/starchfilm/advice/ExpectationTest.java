package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmCaution;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.MouldRisk;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Spans;

/** What a change is said to do: figures that move by more than a twentieth, before and after. */
class ExpectationTest {
  private static final FaultContext USUAL = SeenFaults.on(Castings.USUAL);
  private static final Expectation AS_IT_IS = Expectation.of(USUAL.outlook());
  private static final double DAY_S = 86_400;

  private static Expectation of(Casting casting) {
    return Expectation.of(USUAL.outlook().of(casting));
  }

  @Test
  void aThinnerPourIsSaidToDrySoonerAndThinner() {
    FaultContext thin = USUAL.with(USUAL.outlook().of(Castings.USUAL.pouredTo(2e-3)));
    List<ExpectedEffect> effects = AS_IT_IS.middlesTo(Expectation.of(thin.outlook()));
    assertThat(effects)
        .contains(
            new ExpectedEffect("dry through", dried(USUAL), dried(thin)),
            new ExpectedEffect(
                "dry thickness",
                AdviceFigure.DRY_THICKNESS.words(USUAL),
                AdviceFigure.DRY_THICKNESS.words(thin)));
    assertThat(effects.get(0).clause())
        .isEqualTo("dry through " + dried(USUAL) + " → " + dried(thin));
  }

  private static String dried(FaultContext scene) {
    return Spans.of(scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH));
  }

  @Test
  void whatMovesByATwentiethOrLessIsNotTold() {
    assertThat(thickness(3.12e-3)).isEmpty();
    assertThat(thickness(3.18e-3)).hasSize(1);
    assertThat(thickness(2.88e-3)).isEmpty();
    assertThat(thickness(2.82e-3)).hasSize(1);
  }

  private static List<ExpectedEffect> thickness(double wetM) {
    return AS_IT_IS.middlesTo(of(Castings.USUAL.pouredTo(wetM))).stream()
        .filter(effect -> effect.what().equals("dry thickness"))
        .toList();
  }

  /**
   * Film of hardly any glycerol is brittle, of 30 g per 100 g starch flexible (PlasticiserWindow).
   */
  @Test
  void risksAndFeelAreToldInWords() {
    assertThat(of(Setting.GLYCEROL.set(Castings.USUAL, 0.02)).middlesTo(AS_IT_IS))
        .contains(new ExpectedEffect("feel", "brittle", "flexible"));
    assertThat(
            risky(RiskLevel.LIKELY, RiskLevel.WATCH)
                .middlesTo(risky(RiskLevel.LOW, RiskLevel.EXPECTED)))
        .containsExactly(
            new ExpectedEffect("cracking", "likely", "not expected"),
            new ExpectedEffect("mould", "possible", "expected"));
    assertThat(AS_IT_IS.middlesTo(AS_IT_IS)).isEmpty();
  }

  private static Expectation risky(RiskLevel crack, RiskLevel mould) {
    return new Expectation(
        AS_IT_IS.dryThroughS(),
        AS_IT_IS.film(),
        new PlateRisks(
            new CrackRisk(crack, 1, 1e-4, 1e-4, false),
            AS_IT_IS.risks().curl(),
            new MouldRisk(mould, 48, DAY_S)));
  }

  @Test
  void rangesStandWhereTheyAreAsked() {
    Expectation slow = drying(new Band(8 * DAY_S, 9 * DAY_S, 12 * DAY_S));
    Expectation quick = drying(new Band(4 * DAY_S, 5 * DAY_S, 8 * DAY_S));
    assertThat(slow.changesTo(quick))
        .containsExactly(
            new ExpectedEffect("dry through", "9.0 days (8.0–12)", "5.0 days (4.0–8.0)"));
    assertThat(slow.middlesTo(quick))
        .containsExactly(new ExpectedEffect("dry through", "9.0 days", "5.0 days"));
    Expectation thin = of(Castings.USUAL.pouredTo(2e-3));
    assertThat(AS_IT_IS.changesTo(thin))
        .contains(
            new ExpectedEffect(
                "dry thickness",
                MICROMETRE.band(AS_IT_IS.film().dryThicknessM()),
                MICROMETRE.band(thin.film().dryThicknessM())));
  }

  @Test
  void whatNeverDriesIsSaidNeverTo() {
    double never = Double.POSITIVE_INFINITY;
    Expectation damp = drying(new Band(never, never, never));
    Expectation dry = drying(new Band(4 * DAY_S, 5 * DAY_S, 8 * DAY_S));
    assertThat(damp.middlesTo(dry))
        .containsExactly(new ExpectedEffect("dry through", "never", "5.0 days"));
    assertThat(dry.middlesTo(damp))
        .containsExactly(new ExpectedEffect("dry through", "5.0 days", "never"));
    assertThat(damp.middlesTo(damp)).isEmpty();
  }

  private static Expectation drying(Band dryThroughS) {
    return new Expectation(dryThroughS, AS_IT_IS.film(), AS_IT_IS.risks());
  }

  /** 50 g glycerol per 100 g starch is tacky, the usual 30 g are not. */
  @Test
  void aNextTrialNamesItsEffectsAndTheCautionsThatAreNew() {
    Expectation sticky = of(Setting.GLYCEROL.set(Castings.USUAL, 0.5));
    assertThat(next(sticky, "more glycerol").newCautions()).contains(FilmCaution.TACKY);
    assertThat(next(AS_IT_IS, "another plate").newCautions()).isEmpty();
    assertThat(next(AS_IT_IS, "another plate").sentence())
        .isEqualTo("another plate: no computed figure changes.");
    assertThat(next(drying(new Band(DAY_S, DAY_S, DAY_S)), "a fan", "less water").sentence())
        .startsWith("a fan; and less water: dry through ");
    assertThatThrownBy(() -> next(AS_IT_IS, "one", "two", "three"))
        .hasMessage("a next trial has one or two changes, not 3");
    assertThatThrownBy(() -> next(AS_IT_IS)).isInstanceOf(IllegalArgumentException.class);
  }

  private static NextTrial next(Expectation after, String... changes) {
    return new NextTrial(
        List.of(),
        List.of(changes),
        Castings.USUAL,
        OptionalDouble.empty(),
        List.of(),
        List.of(),
        AS_IT_IS,
        after);
  }
}
