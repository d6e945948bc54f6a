package starchfilm.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.casting.Casting;
import starchfilm.casting.ClosedHeat;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Room;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.files.findings.Fault;
import starchfilm.learning.Workshops;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.planning.ThicknessFinder;
import starchfilm.planning.ThicknessRequest;
import starchfilm.report.caution.Cautions;
import starchfilm.report.plan.ThicknessText;

/** Says how thick a paste may be poured for a date. */
@Command(
    name = "thickness",
    sortOptions = false,
    description = {
      "Say how thick a paste may be poured to be dry by a date: the wet thickness that makes it in"
          + " half and in 9 of 10 likely cases, with the grams for a plate.",
      "",
      "Give a trial file, or a recipe as options, or both: options put over a file ask what if."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFile:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm thickness formulations/garden/4-blend.json --by 5d",
      "  starchfilm thickness --starch potato \"20 g\" --glycerol \"6 g\" --water \"400 g\" \\",
      "      --plate \"300x200mm glass\" --room 19C,55%% --by friday",
      "",
      "Exit codes: 0 done, 1 no pour is dry by then, 2 wrong usage or a fault in the file."
    })
final class ThicknessCommand implements Callable<Integer> {
  private static final List<Double> SHARES = List.of(0.5, 0.9);

  private final CommandContext surroundings;

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "A trial file.")
  private @Nullable Path file;

  @Option(
      names = "--by",
      paramLabel = "WHEN",
      description = "When it must be dry: 5d from the pour, friday, 2026-12-01 18:00.")
  private @Nullable String by;

  @Option(
      names = "--room",
      paramLabel = "AIR",
      description =
          "The air beside the plate: 19C,55%%, or 8-18C,50-80%% by night and day, or a hygrometer"
              + " log such as shed.csv. Not given: the file's.")
  private @Nullable String room;

  @Option(
      names = "--plate",
      paramLabel = "PLATE",
      description = "Sides and material: \"300x200mm glass\". Not given: the file's.")
  private @Nullable String plate;

  @Option(
      names = "--rim",
      paramLabel = "LENGTH",
      description = "Height of the plate's rim, such as 10mm.")
  private @Nullable String rim;

  @ArgGroup(validate = false, heading = "%nThe trial, or what to change in it:%n")
  private RecipeOptions options = new RecipeOptions();

  ThicknessCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (by == null) {
      throw CommandFailure.wrongInput(
          "--by: not given; write when it must be dry, such as --by 5d");
    }
    double byS = TypedDate.secondsFromNow("--by", by, surroundings.clock());
    Trial trial =
        new OneTrial(surroundings)
            .read(file, options, "thickness", "a trial file, or at least --starch and --water");
    ThicknessAnswer answer;
    try {
      ThicknessRequest request = request(trial, byS);
      answer = new ThicknessFinder(known(trial)).find(request, SHARES);
    } catch (IllegalArgumentException e) {
      // The domain refuses impossible requests in one sentence meant for the reader.
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
    Stream.concat(
            ThicknessText.of(answer).stream(),
            Cautions.of(trial).stream().map(caution -> "! " + caution.sentence()))
        .flatMap(line -> Paragraph.of(line, "", "  ").stream())
        .forEach(surroundings.out()::println);
    return ThicknessText.isAnyFound(answer) ? ExitCodes.DONE : ExitCodes.NOT_COMPUTED;
  }

  /**
   * What earlier trials taught; of another room than the file's, only what rooms have in common.
   */
  private ParameterDistribution known(Trial trial) {
    Workshops workshops = new Workshops();
    workshops.faults(List.of(trial)).stream()
        .map(Fault::sentence)
        .forEach(surroundings.err()::println);
    return workshops
        .of(trial)
        .factors(
            room == null ? trial.casting().place().name() : "",
            trial.casting().composition().starchShares(),
            false);
  }

  private ThicknessRequest request(Trial trial, double byS) {
    Casting casting = trial.casting();
    if (plate != null) {
      casting = casting.with(TypedPlates.parse("--plate", plate).plate());
    }
    if (room != null) {
      Room air = TypedRoom.parse("--room", room, surroundings).room();
      casting = casting.with(new DryingPlace(air, casting.benchTemperatureK()));
      ClosedHeat.of(trial.recipe().glycerol(), casting.place())
          .ifPresent(
              closed -> {
                throw CommandFailure.wrongInput(
                    "--room: "
                        + closed
                        + " given, allowed "
                        + ClosedHeat.allowed()
                        + "; "
                        + ClosedHeat.mend());
              });
    }
    return new ThicknessRequest(casting, rimM(trial), byS);
  }

  /** A trial notes the rim above its paste; here it counts from the plate. */
  private double rimM(Trial trial) {
    if (rim != null) {
      return TypedAmounts.lengthM("--rim", rim);
    }
    return plate != null || trial.casting().plate().rimHeightM() == 0
        ? 0
        : trial.casting().plate().rimHeightM() + trial.casting().pour().wetThicknessM().value();
  }
}
