package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Estimate;

/** What an assay does not take, and what it says of it. */
class AssayerRefusalsTest {
  private static final Estimate ROOM = new Estimate(293.15, 0.5);
  private static final Estimate HALF_KILO = new Estimate(0.5, 0.001);
  private static final Estimate NONE = Estimate.exact(0);
  private final Assayer assayer = new Assayer();

  @Test
  void refusesADensityThatGlycerolAndWaterCannotHave() {
    DensityReading heavy = new DensityReading(new Estimate(1300, 2), ROOM);
    DensityReading nothing = new DensityReading(NONE, ROOM);

    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () ->
                    assayer.measured(HALF_KILO, nothing, Optional.empty(), GlycerolOrigin.BOUGHT)))
        .hasMessageStartingWith("density: 0.0 kg/m3 given, allowed 998.0 kg/m3 (water) to 1261.1");
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> assayer.measured(HALF_KILO, heavy, Optional.empty(), GlycerolOrigin.BOUGHT)))
        .hasMessage(
            "density: 1300.0 kg/m3 given, allowed 998.0 kg/m3 (water) to 1261.1"
                + " kg/m3 (pure glycerol) at 20.0 °C; read again without bubbles; note"
                + " that dissolved salt makes a jar heavier, soap and alcohol lighter");
  }

  @Test
  void refusesAHotJar() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> new DensityReading(new Estimate(1200, 2), new Estimate(333.15, 1))))
        .hasMessage(
            "temperature of the jar: 60 °C given, allowed 15 to 30 °C; let the jar stand in the"
                + " room for a few hours and read again");
  }

  @Test
  void refusesARefractiveIndexThatGlycerolAndWaterCannotHave() {
    RefractometerReading glass = new RefractometerReading(new Estimate(1.52, 0.0002), ROOM);

    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> assayer.measured(HALF_KILO, glass, Optional.empty(), GlycerolOrigin.BOUGHT)))
        .hasMessageStartingWith("refractive index: 1.5200 given, allowed 1.3330 (water) to 1.4740");
  }

  @Test
  void refusesAnEmptyLabel() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> assayer.bought(HALF_KILO, 0.00995, Optional.empty())))
        .hasMessage(
            "glycerol by the label: 0.995 % given, allowed 20 to 100 %; write the per cent of the mass,"
                + " such as 99.5 %");
  }

  @Test
  void refusesABottleLighterFullThanEmpty() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            DensityReading.bottle(
                Estimate.exact(0.3), Estimate.exact(0.25), Estimate.exact(0.4), ROOM));
  }

  @Test
  void refusesAJarTooLightForWhatIsInIt() {
    RecoveryLog log = RecoveryLogs.sunflower(List.of());
    for (double jarKg : new double[] {0.005, 0.050}) {
      assertThat(
              assertThrows(
                  IllegalArgumentException.class,
                  () -> assayer.recovered(RecoveryLogs.withJar(log, jarKg), Optional.empty())))
          .hasMessageStartingWith("what the jar holds: ")
          .hasMessageContaining("weigh the jar's content again");
    }
    assertThat(
            assertThrows(
                IllegalArgumentException.class, () -> assayer.bought(NONE, 0.99, Optional.empty())))
        .hasMessage(
            "what the jar holds: 0 g given, allowed more than 0 g; weigh it without the jar");
  }
}
