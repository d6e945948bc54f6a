package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.learning.summary.LeftOut;

/** One plate in two files teaches once. */
class CopiesTest {
  private static final Path HERE = Path.of("");
  private static final LocalDateTime MORNING = LocalDateTime.of(2026, 4, 19, 10, 0);
  private static final PullTest STRIP = MadeUpNotebook.strip(4e6, 0.3);

  private final SyntheticPlates plates = new SyntheticPlates(5);
  private final Trial plate =
      SyntheticPlates.poured(
          SyntheticPlates.dried(plates.any("shed"), ParameterSample.NONE, 0.2, 0.5), MORNING);

  private static Trial copy(Trial of, String file) {
    return SyntheticPlates.with(of, Path.of(file), of.seen().weighings(), of.seen().pulls());
  }

  @Test
  void theFileThatLiesLeastDeepCounts() {
    Trial backup = copy(plate, "old/backup/plate.json");
    Copies found = Copies.among(HERE, List.of(backup, copy(plate, "old/plate.json"), plate));
    assertThat(found.once()).containsExactly(plate);
    assertThat(found.copies())
        .containsExactly(
            new LeftOut(
                "old/backup/plate.json", "the same plate as plate-1.json, which counts once"),
            new LeftOut("old/plate.json", "the same plate as plate-1.json, which counts once"));
  }

  @Test
  void platesThatDifferInPourWeighingsOrStripsCountEach() {
    Trial later = SyntheticPlates.poured(copy(plate, "later.json"), MORNING.plusDays(1));
    Trial fewer =
        SyntheticPlates.with(
            plate, Path.of("fewer.json"), plate.seen().weighings().subList(0, 1), List.of());
    Trial pulled =
        SyntheticPlates.with(
            plate, Path.of("pulled.json"), plate.seen().weighings(), List.of(STRIP));
    Trial stripsAlone =
        SyntheticPlates.with(plate, Path.of("strips.json"), List.of(), List.of(STRIP));
    List<Trial> all = List.of(plate, later, fewer, pulled, stripsAlone);
    assertThat(Copies.among(HERE, all).once()).isEqualTo(all);
    assertThat(Copies.among(HERE, List.of(stripsAlone, copy(stripsAlone, "again.json"))).copies())
        .extracting(LeftOut::file)
        .containsExactly("again.json");
  }

  /** Nothing tells two plates apart that nobody measured, and they teach nothing. */
  @Test
  void platesThatNobodyMeasuredAreNoCopies() {
    Trial one = SyntheticPlates.weighed(plate, List.of());
    List<Trial> all = List.of(one, copy(one, "other.json"));
    assertThat(Copies.among(HERE, all).once()).isEqualTo(all);
  }
}
