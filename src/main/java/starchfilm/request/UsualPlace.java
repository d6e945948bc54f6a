package starchfilm.request;

import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.files.json.PackedText;
import starchfilm.material.air.AirState;

/**
 * Places to dry that people name instead of measuring them. All figures are judged, common practice
 * and no source; they are wide because such places differ.
 *
 * @param name what it is called here; {@code ClosedHeat} knows the heated ones by it
 * @param others other names
 * @param coolestC air by night; the same as by day where it hardly changes
 * @param warmestC air by day
 * @param temperatureSdK how far such places differ
 * @param dampestPct relative humidity by night
 * @param driestPct the same by day
 * @param humiditySdPct how far such places differ
 * @param speedMPerS air along the plate
 * @param speedRelativeSd how far it differs
 * @param remark what else is to be said; may be empty
 */
record UsualPlace(
    String name,
    List<String> others,
    double coolestC,
    double warmestC,
    double temperatureSdK,
    double dampestPct,
    double driestPct,
    double humiditySdPct,
    double speedMPerS,
    double speedRelativeSd,
    String remark) {
  private static final List<UsualPlace> ALL =
      PackedText.of(UsualPlace.class, "usual-places.txt")
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> of(line.split(" *[|] *", -1)))
          .toList();

  private static UsualPlace of(String... row) {
    double[] airC = numbers(row[2]);
    double[] humidityPct = numbers(row[4]);
    return new UsualPlace(
        row[0],
        List.of(row[1].split(", ", -1)),
        airC[0],
        airC[1],
        numbers(row[3])[0],
        humidityPct[0],
        humidityPct[1],
        numbers(row[5])[0],
        numbers(row[6])[0],
        numbers(row[7])[0],
        row[8]);
  }

  private static double[] numbers(String words) {
    return Stream.of(words.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
  }

  /** The one that is called so, the word {@code the} and articles apart. */
  static Optional<UsualPlace> called(String typed) {
    String plain = plain(typed);
    return ALL.stream()
        .filter(
            place ->
                plain.equals(plain(place.name))
                    || place.others.stream().anyMatch(other -> plain.equals(plain(other))))
        .findFirst();
  }

  private static String plain(String typed) {
    return typed
        .toLowerCase(Locale.ROOT)
        .replace('\u00F6', 'o')
        .replaceAll("\\b(?:the|a|an|in|on|my)\\b|[\\s,-]", "");
  }

  static String names() {
    return String.join(", ", ALL.stream().map(UsualPlace::name).toList());
  }

  /** Its air, with the speed that is given where one is. */
  Room room(Optional<Double> toldMPerS, double warmestAfterPourS) {
    AirState mean =
        new AirState(
            (coolestC + warmestC) / 2 + ZERO_CELSIUS_K,
            (driestPct + dampestPct) / 2 * PERCENT,
            toldMPerS.orElse(speedMPerS));
    return coolestC == warmestC
        ? new ConstantRoom(mean)
        : new SwingingRoom(
            mean,
            (warmestC - coolestC) / 2,
            (dampestPct - driestPct) / 2 * PERCENT,
            warmestAfterPourS);
  }

  RoomUncertainty uncertainty(boolean speedTold) {
    return new RoomUncertainty(
        temperatureSdK, humiditySdPct * PERCENT, speedTold ? 0 : speedRelativeSd);
  }

  /** What it is taken as. */
  String assumption() {
    String article = name.matches("outdoors.*") ? "" : name.matches("[aeiou].*") ? "an " : "a ";
    return "the air of %s%s as about %s \u00B0C and %s %%, such places differing widely (judged)"
        .formatted(article, name, range(coolestC, warmestC), range(driestPct, dampestPct));
  }

  private static String range(double from, double to) {
    return from == to
        ? String.format(Locale.ROOT, "%.0f", from)
        : String.format(Locale.ROOT, "%.0f to %.0f", from, to);
  }
}
