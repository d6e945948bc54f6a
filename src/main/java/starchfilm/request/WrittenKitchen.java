package starchfilm.request;

import static starchfilm.files.amount.Dimension.LENGTH;
import static starchfilm.files.amount.Dimension.MASS;
import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.files.amount.Dimension.VOLUME;

import java.util.List;
import java.util.Optional;
import starchfilm.casting.Plate;
import starchfilm.casting.Pour;
import starchfilm.planning.Kitchen;
import starchfilm.planning.Kitchen.EqualPlates;

/** Pot, balance and plates, as written. */
final class WrittenKitchen {

  private static final double USUAL_POT_M3 = 2e-3;
  private static final double USUAL_STEP_KG = 1e-3;

  private WrittenKitchen() {}

  static Optional<Kitchen> read(EntryReader in) {
    return in.made(
        "kitchen",
        () -> {
          List<WrittenPlates> sizes = plates(in);
          double rimM = in.usually("kitchen.rim", LENGTH::si, 0, "plates without a rim");
          double uneven =
              in.usually(
                  "kitchen.uneven",
                  SHARE::si,
                  Pour.DEFAULT_UNEVENNESS,
                  "thin edge and thick spot 25 % from the average");
          double potM3 =
              in.usually("kitchen.pot", VOLUME::si, USUAL_POT_M3, "a pot that holds 2 l");
          double stepKg =
              in.usually("kitchen.scale", MASS::si, USUAL_STEP_KG, "a balance that shows 1 g");
          WrittenPlates poured = WrittenPlates.mean(sizes);
          return new Kitchen(
              potM3,
              stepKg,
              poured.plate(),
              rimM,
              poured.count(),
              uneven,
              sizes.stream().map(size -> new EqualPlates(size.plate(), size.count())).toList());
        });
  }

  private static List<WrittenPlates> plates(EntryReader in) {
    if (in.has("kitchen.plates") || !in.hasAny("plates.count", "plates.length", "plates.width")) {
      return plates(in, "kitchen.plates", Optional.empty())
          .orElseGet(
              () -> {
                int count = WrittenSeries.platesNeeded(in);
                in.assume(
                    (count == 1 ? "one plate" : count + " plates, as many as the series needs,")
                        + " of glass, 30 \u00D7 20 cm");
                return List.of(WrittenPlates.parse(count + "x 30x20cm glass"));
              });
    }
    for (String part : List.of("plates.count", "plates.length", "plates.width")) {
      in.require(part, "a number, such as 2");
    }
    in.require("plates.material", "what the plates are made of, such as glass");
    int count =
        in.one(
            "plates.count",
            typed -> (int) Quantities.number(typed, "a whole number, such as 2"),
            1);
    double lengthM = in.one("plates.length", LENGTH::si, Double.NaN);
    double widthM = in.one("plates.width", LENGTH::si, Double.NaN);
    return List.of(
        in.one("plates.material", typed -> WrittenPlates.of(count, lengthM, widthM, typed))
            .orElseThrow());
  }

  /**
   * Plates of one or several sizes, semicolons between; what is to be said of them is.
   *
   * @param before the plate they take the place of
   */
  static Optional<List<WrittenPlates>> plates(
      EntryReader in, String field, Optional<Plate> before) {
    return in.all(
        field,
        words -> {
          List<String> typed = List.of(WrittenPlates.APART.split(String.join(";", words), -1));
          List<WrittenPlates> sizes = typed.stream().map(WrittenPlates::parse).toList();
          sizes.stream()
              .map(size -> WrittenPlates.remark(size.plate()))
              .distinct()
              .filter(remark -> !remark.isEmpty())
              .forEach(in::remark);
          typed.stream()
              .distinct()
              .flatMap(size -> WrittenPlates.assumption(size, before).stream())
              .forEach(in::assume);
          if (sizes.size() > 1) {
            in.remark(WrittenPlates.remark(sizes, field.equals("kitchen.plates")));
          }
          return sizes;
        });
  }
}
