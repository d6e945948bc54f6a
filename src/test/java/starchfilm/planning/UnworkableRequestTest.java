package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.Feel;
import starchfilm.material.ingredient.StarchKind;

class UnworkableRequestTest {
  private final Planner planner = new Planner(ParameterDistribution.textbook());

  @Test
  void refusesStrengthAndStretchThatNoGlycerolGivesTogether() {
    Wish both =
        new Wish(Optional.empty(), OptionalDouble.of(20e6), OptionalDouble.of(0.4), Requests.NONE);

    refused(
        () -> planner.plan(Requests.garden().with(both)),
        "20 MPa of strength and 40 % of stretch: no amount of glycerol gives both in air of 50 %"
            + " relative humidity; ");
  }

  @Test
  void refusesAFeelThatThisAirDoesNotLeave() {
    PlanRequest dry =
        new PlanRequest(
            Requests.potatoAnd(0.25),
            Requests.kitchen(),
            new Wish(Optional.empty(), OptionalDouble.of(150e6), Requests.NONE, Requests.NONE),
            Requests.garden().place(),
            Requests.garden().byS(),
            0.8,
            Requests.garden().use());

    refused(
        () -> planner.plan(dry),
        "150 MPa of strength: no amount of glycerol gives that in air of 50 % relative humidity;"
            + " it can be stiff or flexible or stretchy, up to ");
  }

  @Test
  void refusesAPlateThatThePotCannotFill() {
    Kitchen kitchen =
        new Kitchen(
            0.0005, 0.001, new Plate(PlateMaterial.GLASS, 1, 0.8, 0.004, 0), 0, 1, 0.25, List.of());

    refused(
        () -> planner.plan(Requests.garden().with(kitchen)),
        "plate of 100 × 80 cm: a pot of 0.5 l given, allowed one that holds at least ");
  }

  /** A round plate is kept as a square of its area; whoever measured it knows only its width. */
  @Test
  void namesARoundPlateByWhatItMeasuresAcross() {
    Plate round = Plate.across(PlateMaterial.GLASS, 5.5, 5.5, 0.004, Plate.Outline.ELLIPSE);

    refused(
        () -> new Kitchen(0.002, 0.001, round, 0, 1, 0.25, List.of()),
        "sides of a plate: 550 cm round given, allowed 1 to 500 cm; write length and width of"
            + " one plate");
  }

  @Test
  void refusesAStarchThatAnOpenPanLeavesRaw() {
    Supplies supplies =
        new Supplies(
            Requests.recovered(), 0.2, List.of(Requests.plenty(StarchKind.HIGH_AMYLOSE_CORN)), 0);

    refused(
        () -> planner.plan(Requests.garden().with(supplies)),
        "high-amylose corn starch alone: an open pan does not gelatinise it; it needs 120 to 140"
            + " °C under pressure. Name another starch beside it or instead");
  }

  @Test
  void refusesADateBeforeThePour() {
    refused(
        () -> Requests.garden().by(OptionalDouble.of(-2 * Requests.DAY_S)),
        "date: -2 days after the pour given, allowed a time after the pour; write when the film"
            + " must be ready, such as 5d");
  }

  @Test
  void refusesAFaultForAWish() {
    refused(
        () -> Requests.feeling(Feel.STICKY),
        "feel: sticky given, allowed stiff, flexible or stretchy; the others are faults, not"
            + " wishes");
  }

  @Test
  void refusesAStarchNamedTwice() {
    refused(
        () ->
            new Supplies(
                Requests.recovered(),
                0.1,
                List.of(
                    Requests.plenty(StarchKind.POTATO), Requests.starch(StarchKind.POTATO, 0.1)),
                0.05),
        "potato starch is named twice; name each starch once, with all of its grams");
  }

  @Test
  void refusesAmountsThatCannotBe() {
    refused(
        () -> Requests.starch(StarchKind.CORN, 0),
        "corn starch at hand: 0 g given, allowed more than 0 g; write the"
            + " grams in the bag, or leave them out if you have plenty");
    refused(
        () -> Requests.potatoAnd(-0.01),
        "glycerol at hand: -10 g given, allowed 0 g or more; write the grams in the jar");
    refused(
        () -> Requests.kitchen(0.002, 0.001, 0),
        "plates: 0 given, allowed 1 to 1000; write how many plates you have");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable request, String sentence) {
    assertThatThrownBy(request)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(sentence);
  }
}
