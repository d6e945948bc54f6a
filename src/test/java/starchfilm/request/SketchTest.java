package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.trial.Trial;

class SketchTest {
  private static final double SPARE = 0.05;

  @ParameterizedTest
  @MethodSource("trials")
  void thePotHoldsWhatIsPouredOverTheWholeRange(Path file) throws Exception {
    TrialQuestion.Base base = TrialQuestion.Base.of(Files.readString(file), file);
    double now = Sketch.of(base.trial()).figures().get(Handle.PLASTICISER);
    for (int tenths = 5; tenths <= 120; tenths += 3) {
      for (int plates : new int[] {1, 2, 5}) {
        for (double plasticiser : new double[] {5, now, 70}) {
          Sketch sketch =
              Sketch.of(base.trial())
                  .with(Handle.WET, tenths / 10.0)
                  .with(Handle.PLASTICISER, plasticiser)
                  .with(Handle.STARCH, 3 + tenths / 15);
          Trial moved = sketch.applied(base, "moved", plates, SPARE).trial();
          assertThat(moved.casting().paste().massKg() / moved.casting().pouredOnAllKg())
              .as("%s on %d plates: paste in the pot over paste poured", sketch, plates)
              .isBetween(1.03, 1.3);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("trials")
  void everyHandleComesToStandWhereItWasMoved(Path file) throws Exception {
    TrialQuestion.Base base = TrialQuestion.Base.of(Files.readString(file), file);
    Sketch still = Sketch.of(base.trial());
    for (Handle handle : still.figures().keySet()) {
      for (double to : new double[] {handle.usual().least(), handle.usual().most()}) {
        Trial trial = still.with(handle, to).applied(base, "moved", 2, SPARE).trial();
        assertThat(handle.of(trial.casting()))
            .as("%s moved to %s", handle, to)
            .isCloseTo(to, within(handle == Handle.PLASTICISER ? 1 : handle.step()));
      }
    }
  }

  @Test
  void scalesVolumesAndRangesAndLeavesWhatIsTheMakersOwn() throws Exception {
    String text =
        """
        {"recipe": {
           "starch": {"kind": "tapioca", "mass_g": {"from": 20, "to": 24}},
           "glycerol": {"volume_ml": 6.5, "purity_pct": 99}, "water": {"volume_ml": 370},
           "_mine_g": 7},
         "cook": {"minutes": 10, "water_lost_g": 20},
         "pour": {"plates": 1, "wet_thickness_mm": 5,
                  "plate": {"length_mm": 300, "width_mm": 200}}}
        """;
    TrialQuestion.Base base = TrialQuestion.Base.of(text, Path.of("sketch.json"));

    String twice =
        Sketch.of(base.trial()).with(Handle.WET, 5).applied(base, "twice", 2, SPARE).text();

    assertThat(twice.replaceAll("\\s", ""))
        .contains("\"from\":40.0,\"to\":48.0", "\"volume_ml\":13.0", "\"volume_ml\":740")
        .contains("\"water_lost_g\":40.0", "\"_mine_g\":7", "\"minutes\":10");
  }

  static List<Path> trials() throws IOException {
    try (Stream<Path> starters = Files.list(Path.of("formulations"));
        Stream<Path> garden = Files.list(Path.of("formulations/garden"))) {
      return Stream.concat(starters, garden)
          .filter(file -> file.toString().endsWith(".json") && !file.endsWith("workshop.json"))
          .sorted()
          .toList();
    }
  }
}
