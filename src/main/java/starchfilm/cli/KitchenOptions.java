package starchfilm.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.files.amount.Measure;
import starchfilm.files.amount.MistypedException;
import starchfilm.planning.Kitchen;

/** Pot, balance and plates, as options. */
final class KitchenOptions {
  @Option(
      names = "--plates",
      paramLabel = "PLATES",
      description =
          "Number, sides and material: \"4x300x200mm glass\", \"2x 24cm round steel\". Known: glass,"
              + " polypropylene, acrylic, ptfe, silicone, laminate, steel.")
  private String plates = "";

  @Option(
      names = "--rim",
      paramLabel = "LENGTH",
      description = "Height of the plates' rim, such as 10mm. Not given: none.")
  private @Nullable String rim;

  @Option(
      names = "--uneven",
      paramLabel = "SHARE",
      description = "How far thin edge and thick spot are from the average. Default: 25%%.")
  private String uneven = "25%";

  @Option(
      names = "--pot",
      paramLabel = "VOLUME",
      description = "What the pot holds, brim-full. Default: 2l.")
  private String pot = "2l";

  @Option(
      names = "--scale",
      paramLabel = "MASS",
      description = "Smallest step the balance shows. Default: 1g.")
  private String scale = "1g";

  void requireGiven() {
    if (plates.isEmpty()) {
      throw CommandFailure.wrongInput(
          "--plates: not given; write your plates, such as --plates \"4x300x200mm glass\"");
    }
  }

  boolean isRound() {
    return TypedPlates.isRound(plates);
  }

  Kitchen kitchen() {
    TypedPlates typed = TypedPlates.parse("--plates", plates);
    return new Kitchen(
        TypedAmounts.volumeM3("--pot", pot),
        stepKg(),
        typed.plate(),
        rim == null ? 0 : FilmOptions.metres("--rim", rim),
        typed.count(),
        TypedAmounts.share("--uneven", uneven));
  }

  private double stepKg() {
    try {
      return Measure.mass(scale).kg();
    } catch (MistypedException e) {
      throw CommandFailure.wrongInput("--scale: " + e.getMessage());
    }
  }
}
