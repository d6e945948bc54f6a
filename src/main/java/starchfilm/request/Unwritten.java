package starchfilm.request;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.casting.trial.NotRecorded;

/** What neither a file nor the words beside it say of a trial, by the names of the door. */
final class Unwritten {
  private Unwritten() {}

  /** What a trial without a file does not say, by what could have been written of it. */
  static NotRecorded asTyped(EntryReader in, NotRecorded gap) {
    String told =
        saying(gap.field().replaceAll("\\[\\d+]", ""))
            .map(field -> in.quoted(field.key()))
            .filter(quoted -> !quoted.isEmpty())
            .map(quoted -> " (" + quoted + ")")
            .orElse("");
    return new NotRecorded(
        gap.field(),
        gap.what() + told,
        gap.assumed().replaceFirst(", or what poured_g .*", ""),
        gap.cost());
  }

  /** The field of a request that says what a field of a file does; a page may have no input. */
  private static Optional<Field> saying(String gap) {
    return Stream.concat(Field.group("trial").stream(), Field.group("place").stream())
        .filter(field -> !field.path().isEmpty())
        .filter(
            field ->
                (gap + ".").startsWith(field.path() + ".") || field.path().equals(gap + ".mass_g"))
        .max(Comparator.comparing(field -> field.path().length()));
  }

  /** Whether what a file does not record was written of plate and room. */
  static boolean isWritten(EntryReader in, String field) {
    return switch (field) {
      case "room.air_C" -> in.hasAny(WrittenPlace.ROOM, WrittenPlace.AIR);
      case "room.rh_pct" -> in.hasAny(WrittenPlace.ROOM, WrittenPlace.HUMIDITY);
      case "room.air_speed_m_per_s" -> in.hasAny(WrittenPlace.ROOM, WrittenPlace.SPEED);
      default ->
          field.startsWith("pour.plate.")
              && !field.endsWith(".tare_g")
              && !field.endsWith(".thickness_mm")
              && in.has("trial.plate");
    };
  }
}
