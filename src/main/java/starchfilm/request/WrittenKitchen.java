package starchfilm.request;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.planning.Kitchen;

/** Pot, balance and plates, as written. */
final class WrittenKitchen {

  static final Field PLATES = Field.of("kitchen.plates");
  static final Field RIM = Field.of("kitchen.rim");
  static final Field UNEVEN = Field.of("kitchen.uneven");
  static final Field POT = Field.of("kitchen.pot");
  static final Field SCALE = Field.of("kitchen.scale");

  /** The parts of plates, which only a form asks for one by one. */
  private static final Field COUNT = Field.of("plates.count");

  private static final Field LENGTH = Field.of("plates.length");
  private static final Field WIDTH = Field.of("plates.width");
  private static final Field MATERIAL = Field.of("plates.material");

  private static final double USUAL_POT_M3 = 2e-3;
  private static final double USUAL_STEP_KG = 1e-3;
  private static final double USUALLY_UNEVEN = 0.25;

  private WrittenKitchen() {}

  static Optional<Kitchen> read(EntryReader in) {
    return in.made(
        () -> {
          List<WrittenPlates> sizes = plates(in);
          double rimM = in.usually(RIM, Quantities::lengthM, 0, "plates without a rim");
          double uneven =
              in.usually(
                  UNEVEN,
                  Quantities::share,
                  USUALLY_UNEVEN,
                  "thin edge and thick spot 25 % from the average");
          double potM3 =
              in.usually(POT, Quantities::volumeM3, USUAL_POT_M3, "a pot that holds 2 l");
          double stepKg =
              in.usually(SCALE, Quantities::exactMassKg, USUAL_STEP_KG, "a balance that shows 1 g");
          WrittenPlates poured = WrittenPlates.mean(sizes);
          return new Kitchen(
              potM3,
              stepKg,
              poured.plate(),
              rimM,
              poured.count(),
              uneven,
              sizes.stream().map(size -> new Kitchen.Size(size.plate(), size.count())).toList());
        });
  }

  private static List<WrittenPlates> plates(EntryReader in) {
    if (in.has(PLATES) || (!in.has(COUNT) && !in.has(LENGTH) && !in.has(WIDTH))) {
      return plates(in, PLATES)
          .orElseGet(
              () -> {
                int count = WrittenSeries.platesNeeded(in);
                in.assume(
                    (count == 1 ? "one plate" : count + " plates, as many as the series needs,")
                        + " of glass, 30 \u00D7 20 cm");
                return List.of(WrittenPlates.parse(count + "x 30x20cm glass"));
              });
    }
    for (Field part : List.of(COUNT, LENGTH, WIDTH)) {
      in.require(part, "a number, such as 2");
    }
    int count =
        in.one(COUNT, typed -> (int) Quantities.number(typed, "a whole number, such as 2"), 1);
    double lengthM = in.one(LENGTH, Quantities::lengthM, Double.NaN);
    double widthM = in.one(WIDTH, Quantities::lengthM, Double.NaN);
    return List.of(
        in.one(MATERIAL, typed -> WrittenPlates.of(count, lengthM, widthM, typed)).orElseThrow());
  }

  /** Each size by itself; several may stand in one text with semicolons between. */
  private static Stream<String> sizes(List<String> words) {
    return words.stream().flatMap(word -> Stream.of(word.split(";", -1))).map(String::strip);
  }

  /** Plates of one or several sizes; what is to be said of them is. */
  static Optional<List<WrittenPlates>> plates(EntryReader in, Field field) {
    Optional<List<WrittenPlates>> sizes =
        in.all(field, words -> sizes(words).map(WrittenPlates::parse).toList());
    sizes.stream()
        .flatMap(List::stream)
        .map(size -> WrittenPlates.remark(size.plate()))
        .distinct()
        .filter(remark -> !remark.isEmpty())
        .forEach(in::remark);
    if (sizes.isPresent()) {
      in.all(field, words -> sizes(words).filter(WrittenPlates::isSizeless).distinct().toList())
          .orElse(List.of())
          .forEach(word -> in.assume(WrittenPlates.assumption(word)));
    }
    sizes.filter(all -> all.size() > 1).map(WrittenPlates::remark).ifPresent(in::remark);
    return sizes;
  }
}
