package starchfilm.cli;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.planning.PlanRequest;

/** Where the plates dry, and by when, as options. */
final class PlaceOptions {
  @Option(
      names = "--room",
      paramLabel = "AIR",
      description =
          "The air beside the plates: 19C,55%%, or 8-18C,50-80%% by night and day, or a hygrometer"
              + " log such as shed.csv; add 0.5m/s near a fan.")
  private @Nullable String room;

  @Option(
      names = "--room-name",
      paramLabel = "NAME",
      description =
          "What your trials call that room, for what the command learn has found of it. Not given:"
              + " only what your rooms have in common.")
  private String roomName = "";

  @Option(
      names = "--bench",
      paramLabel = "TEMPERATURE",
      description = "Temperature of what the plates stand on. Not given: the air's.")
  private @Nullable String bench;

  @Option(
      names = "--by",
      paramLabel = "WHEN",
      description =
          "When it must be ready: 5d from the pour, friday, 2026-12-01 18:00. Not given: any time.")
  private @Nullable String by;

  @Option(
      names = "--sure",
      paramLabel = "SHARE",
      description = "How sure that must be. Default: 80%%.")
  private @Nullable String sure;

  TypedRoom room(CommandContext surroundings) {
    if (room == null) {
      throw CommandFailure.wrongInput(
          "--room: not given; write the air beside the plates, such as --room 19C,55%");
    }
    TypedRoom typed = TypedRoom.parse("--room", room, surroundings);
    if (!roomName.isBlank()) {
      // So that what is poured there teaches of that room.
      typed.section().put("name", roomName.strip());
    }
    return typed;
  }

  String roomName() {
    return roomName;
  }

  OptionalDouble benchK() {
    return bench == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(TypedAmounts.temperatureK("--bench", bench));
  }

  OptionalDouble byS(CommandContext surroundings) {
    return by == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(TypedDate.secondsFromNow("--by", by, surroundings.clock()));
  }

  double sure() {
    return sure == null ? PlanRequest.USUALLY_SURE : TypedAmounts.share("--sure", sure);
  }
}
