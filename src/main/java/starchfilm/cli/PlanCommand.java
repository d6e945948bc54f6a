package starchfilm.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.files.findings.Fault;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.Planner;
import starchfilm.planning.StarchAtHand;
import starchfilm.report.PageRenderer;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanText;
import starchfilm.report.plan.PlannedTrial;
import starchfilm.web.Questions;

/** Plans recipes from what is at hand. */
@Command(
    name = "plan",
    sortOptions = false,
    customSynopsis = {
      "starchfilm plan --glycerol MASS --starch KIND --plates PLATES --room AIR [options]"
    },
    description = {
      "Find recipes for the glycerol at hand: what to weigh out, how thick to pour, what film it"
          + " makes, and how surely it is ready by the date.",
      "",
      "Up to four recipes come back: the safest, the most film, the one ready soonest, and the one"
          + " closest to the wish. Each is rounded to the balance, and what is forecast is what was"
          + " rounded."
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm plan --glycerol 250g --purity 82%% --salt 3%% --origin recovered \\",
      "      --starch potato --plates \"4x300x200mm glass\" --feel flexible --room 19C,55%% --by 5d \\",
      "      --sheet sheets.html --save trials",
      "",
      "Exit codes: 0 done, 1 nothing fits (what to give up is printed), 2 wrong input."
    })
final class PlanCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @ArgGroup(validate = false, heading = "%nWhat is at hand:%n")
  private SupplyOptions supplies = new SupplyOptions();

  @ArgGroup(validate = false, heading = "%nPlates, pot and balance:%n")
  private KitchenOptions kitchen = new KitchenOptions();

  @ArgGroup(validate = false, heading = "%nThe film wanted:%n")
  private FilmOptions film = new FilmOptions();

  @ArgGroup(validate = false, heading = "%nWhere and when:%n")
  private PlaceOptions place = new PlaceOptions();

  @Option(
      names = "--sheet",
      paramLabel = "PAGE",
      description =
          "Also write weigh-out sheets to print, one page a recipe; - for standard output.")
  private @Nullable String sheet;

  @Option(
      names = "--save",
      paramLabel = "FOLDER",
      description = "Also write a trial file a recipe into this folder; nothing is written over.")
  private @Nullable String folder;

  PlanCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Optional<OutputFile> page =
        Optional.ofNullable(sheet)
            .map(name -> OutputFile.of("--sheet", name, OutputFile.Kind.SHEETS, surroundings));
    Plan plan;
    TypedRoom room;
    try {
      room = room();
      plan = plan(room);
    } catch (IllegalArgumentException e) {
      // The domain refuses impossible requests in one sentence meant for the reader.
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
    boolean toTerminal = page.isEmpty() || !page.get().isStandardOutput();
    if (toTerminal) {
      print(PlanText.of(plan, remarks()));
    }
    if (plan.recipes().isEmpty()) {
      throw CommandFailure.notComputed("no recipe fits everything that was asked.");
    }
    page.ifPresent(
        file -> file.write(() -> new PlanReport(new PageRenderer()).html(plan, remarks())));
    if (folder != null) {
      List<String> written = new PlanFiles(surroundings).write(folder, plan, room);
      if (toTerminal) {
        print(List.of("", "Ready to take notes: " + String.join(", ", written) + "."));
      }
    }
    if (toTerminal && page.isPresent()) {
      print(List.of("Sheets to print: " + page.get().shown() + "."));
    }
    return ExitCodes.DONE;
  }

  private TypedRoom room() {
    supplies.requireGiven();
    kitchen.requireGiven();
    return place.room(surroundings);
  }

  /** What earlier trials taught, where the new ones go or else where the command is run. */
  private ParameterDistribution known() {
    Path home = surroundings.resolve(folder == null ? Path.of("") : Path.of(folder));
    Workshops workshops = new Workshops();
    workshops.fault(home).map(Fault::sentence).ifPresent(surroundings.err()::println);
    Workshop workshop = workshops.in(home);
    List<StarchAtHand> starches = supplies.supplies().starches();
    Map<StarchKind, Double> evenShares =
        starches.stream()
            .collect(Collectors.toMap(StarchAtHand::kind, starch -> 1.0 / starches.size()));
    return workshop.factors(place.roomName(), evenShares, false);
  }

  private Plan plan(TypedRoom room) {
    return new Planner(known()).plan(request(room));
  }

  /** What the words ask for, and each recipe as the text of a trial file. */
  Questions.Planned planned() {
    TypedRoom room = room();
    Plan plan = plan(room);
    return new Questions.Planned(
        plan,
        remarks(),
        plan.recipes().stream()
            .map(
                recipe ->
                    PlannedTrial.text(
                        recipe,
                        plan.request().kitchen().scaleStepKg(),
                        room.section().deepCopy(),
                        plan.request().use()))
            .toList());
  }

  private PlanRequest request(TypedRoom room) {
    return new PlanRequest(
        supplies.supplies(),
        kitchen.kitchen(),
        film.wish(),
        new DryingPlace(
            place.roomName().isBlank() ? "room" : place.roomName(),
            room.room(),
            RoomUncertainty.NONE,
            place.benchK()),
        place.byS(surroundings),
        place.sure(),
        film.use());
  }

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (!supplies.isPurityKnown()) {
      remarks.add(
          "The jar's purity was not given; 80 to 100 % glycerol is taken, which widens every range."
              + " Assay it: starchfilm assay --help");
    }
    if (kitchen.isRound()) {
      remarks.add("A round plate is counted as the square of the same area.");
    }
    return remarks;
  }

  private void print(List<String> lines) {
    for (String line : lines) {
      int indent = line.length() - line.stripLeading().length();
      Paragraph.of(line.strip(), " ".repeat(indent), " ".repeat(indent + 2))
          .forEach(surroundings.out()::println);
    }
  }
}
