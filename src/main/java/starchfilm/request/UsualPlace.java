package starchfilm.request;

import static starchfilm.numerics.units.Units.PERCENT;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.files.amount.Dimension;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.PackedText;
import starchfilm.request.WrittenAir.AirSpan;

/**
 * Places to dry that people name instead of measuring them. All figures are judged, common practice
 * and no source; they are wide because such places differ.
 *
 * @param name what it is called here; {@code ClosedHeat} knows the heated ones by it
 * @param others other names
 * @param air its air, from night to day where that differs
 * @param uncertainty how far such places differ
 * @param remark what else is to be said; may be empty
 */
record UsualPlace(
    String name,
    List<String> others,
    Map<Dimension, AirSpan> air,
    RoomUncertainty uncertainty,
    String remark) {
  private static final List<UsualPlace> ALL =
      PackedText.rows(UsualPlace.class, "usual-places.txt", 7).stream()
          .map(UsualPlace::of)
          .toList();

  private static UsualPlace of(List<String> row) {
    return new UsualPlace(
        row.get(0),
        List.of(row.get(1).split(", ", -1)),
        WrittenAir.parts(row.get(2), ""),
        new RoomUncertainty(
            Double.parseDouble(row.get(3)),
            Double.parseDouble(row.get(4)) * PERCENT,
            Double.parseDouble(row.get(5))),
        row.get(6));
  }

  /** The one that is called so, the word {@code the} and articles apart. */
  static Optional<UsualPlace> called(String typed) {
    String plain = plain(typed);
    return ALL.stream()
        .filter(
            place ->
                Stream.concat(Stream.of(place.name), place.others.stream())
                    .anyMatch(name -> plain.equals(plain(name))))
        .findFirst();
  }

  private static String plain(String typed) {
    return typed
        .toLowerCase(Locale.ROOT)
        .replace('\u00F6', 'o')
        .replaceAll("\\b(?:the|a|an|in|on|my)\\b|[\\s,-]", "");
  }

  static String names() {
    return ALL.stream().map(UsualPlace::name).collect(Collectors.joining(", "));
  }

  private AirSpan part(Dimension dimension) {
    return Objects.requireNonNull(air.get(dimension));
  }

  /** The place as a casting takes it. */
  DryingPlace place(Clock clock) {
    return new DryingPlace(
        name,
        WrittenAir.room(
            part(Dimension.TEMPERATURE),
            part(Dimension.SHARE),
            part(Dimension.SPEED).middle(),
            clock),
        uncertainty,
        OptionalDouble.empty());
  }

  /** What it is taken as. */
  String assumption() {
    String article = name.matches("outdoors.*") ? "" : name.matches("[aeiou].*") ? "an " : "a ";
    return "the air of %s%s as about %s \u00B0C and %s %%, such places differing widely (judged)"
        .formatted(article, name, range(Dimension.TEMPERATURE), range(Dimension.SHARE));
  }

  private String range(Dimension dimension) {
    AirSpan span = part(dimension);
    String from = Allowed.plain(span.from());
    return span.swings() ? from + " to " + Allowed.plain(span.to()) : from;
  }
}
