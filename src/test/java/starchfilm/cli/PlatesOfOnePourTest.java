package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Three plates of one pour, each weighed, measured and ended by itself. */
class PlatesOfOnePourTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void pour() throws IOException {
    file = folder.resolve("windows.json");
    Files.writeString(
        file,
        """
        {"name": "Windows", "poured_at": "2026-04-19T10:00",
         "recipe": {"starch": {"kind": "potato", "mass_g": 20.0},
                    "glycerol": {"mass_g": 6, "purity_pct": 99}, "water": {"mass_g": 460}},
         "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 25},
         "pour": {"plate": {"material": "glass", "length_mm": 300, "width_mm": 200,
                            "tare_g": 600}, "plates": 3, "poured_g": 150},
         "room": {"name": "kitchen", "air_C": 21, "rh_pct": 50}}
        """);
  }

  private String run(String... words) {
    Terminal terminal = new Terminal(folder);
    assertThat(terminal.run(words)).as(terminal.err()).isZero();
    return terminal.out();
  }

  private JsonNode today() throws IOException {
    return JSON.readTree(run("today", "--json", "-")).path("rows");
  }

  private JsonNode plate(int number) throws IOException {
    for (JsonNode plates : today()) {
      if (List.of(plates.path("numbers").asText().split(", ")).contains("" + number)) {
        return plates;
      }
    }
    throw new AssertionError("plate " + number + " is not drying");
  }

  private static double width(JsonNode plate) {
    return plate.path("dry_through_h_high").doubleValue()
        / plate.path("dry_through_h_low").doubleValue();
  }

  private static double middle(JsonNode plate) {
    return plate.path("dry_through_h").doubleValue();
  }

  /** 150 g on 600 cm2 is as thick as 100 g on 400 cm2, and dries alike. */
  @Test
  void aSmallerPlateWithItsShareOfThePasteStandsAsTheFirst() throws IOException {
    String sized = "\"plates\": 3, \"other_areas_cm2\": [600, 400]";
    Files.writeString(file, Files.readString(file).replace("\"plates\": 3", sized));
    run("note", "windows.json", "--of", "3", "--tare", "500g");
    run("note", "windows.json", "--weighed", "6h=720g", "--weighed", "20h=660g");
    run("note", "windows.json", "--of", "3", "--weighed", "6h=580g", "--weighed", "20h=540g");

    assertThat(middle(plate(3))).isCloseTo(middle(plate(1)), withinPercentage(3));
    assertThat(plate(3).at("/scale_at_rest_g").doubleValue() - 500)
        .isCloseTo(
            (plate(1).at("/scale_at_rest_g").doubleValue() - 600) * 2 / 3, withinPercentage(8));
    assertThat(run("dry", "windows.json")).doesNotContain("Too little paste");
    Terminal terminal = new Terminal(folder);
    assertThat(terminal.run("note", "windows.json", "--of", "3", "--poured-mass", "100g"))
        .isEqualTo(2);
    assertThat(terminal.err()).contains("it is the paste on the first plate");
  }

  @Test
  void plansAndLinesListThePlatesOfAPourThatDifferInSize() throws IOException {
    String[] sizes = {"--plates", "30x20cm glass", "--plates", "20x20cm steel"};
    run(
        "new",
        "20 g potato; 6 g glycerol; 400 g water; 3 mm",
        sizes[0],
        sizes[1],
        sizes[2],
        sizes[3]);
    run(
        "plan",
        "--glycerol",
        "100g",
        "--starch",
        "potato",
        "--room",
        "20C,50%",
        "--save",
        "planned",
        sizes[0],
        sizes[1],
        sizes[2],
        sizes[3]);
    List<Path> made = new ArrayList<>(List.of(folder.resolve("as-cooked.json")));
    try (Stream<Path> planned = Files.list(folder.resolve("planned"))) {
      planned.filter(one -> one.toString().endsWith(".json")).forEach(made::add);
    }

    assertThat(made).hasSizeGreaterThan(1);
    for (Path one : made) {
      JsonNode pour = JSON.readTree(one.toFile()).path("pour");
      assertThat(pour.at("/plate/length_mm").intValue()).isEqualTo(300);
      assertThat(pour.path("plates").intValue()).isEqualTo(2);
      assertThat(pour.path("other_areas_cm2").toString()).isEqualTo("[400]");
    }
    assertThat(run("dry", "as-cooked.json")).contains("3.0 mm wet on glass, 30 × 20 cm");
  }

  @Test
  void theOneThatWasNotWeighedLearnsFromTheOthers() throws IOException {
    JsonNode atThePour = plate(3);
    run("note", "windows.json", "--weighed", "6h=719g", "--weighed", "20h=651g");
    JsonNode one = plate(3);
    run("note", "windows.json", "--of", "2", "--weighed", "6h=721g", "--weighed", "20h=655g");
    JsonNode two = plate(3);

    assertThat(width(one)).isLessThan(0.97 * width(atThePour)).isGreaterThan(width(plate(1)));
    assertThat(width(two)).isLessThan(width(one));
    assertThat(middle(plate(1)) < middle(atThePour)).isEqualTo(middle(two) < middle(atThePour));
    assertThat(two.path("dry_through_at_the_pour_h").doubleValue()).isEqualTo(middle(atThePour));
    assertThat(two.path("sentence").asText()).contains("Windows, plate 3");
  }

  @Test
  void aWeighingSaysWhichPlateItIsOfAlsoWhereNoneIsNamed() throws IOException {
    assertThat(run("note", "windows.json", "--weighed", "6h=719g")).contains("plate 1 weighed");
    String file = Files.readString(folder.resolve("windows.json"));
    Files.writeString(folder.resolve("windows.json"), file.replaceFirst(", \"plate\": 1(?=})", ""));

    assertThat(run("note", "windows.json", "--list"))
        .isEqualTo("weighing 1: plate 1 weighed 719 g, +6h\n");
  }

  @Test
  void asksAboutAPlateThatIsWeighedAfterItsFilmWasOff() {
    run("note", "windows.json", "--of", "2", "--off", "--weighed", "700g", "--at", "+20h");
    String odd = "weighings[2].at: weighed with its plate after the film was off it; check both";

    Outcome later =
        Outcome.of(folder, "note", "windows.json", "--of", "2", "--weighed", "24h=690g");
    assertThat(later.exit()).isZero();
    assertThat(later.err()).contains(odd);
    assertThat(Outcome.of(folder, "note", "windows.json", "--weighed", "24h=690g").err()).isEmpty();
    assertThat(run("check", "windows.json")).containsOnlyOnce("after the film was off it");
  }

  @Test
  void anEndOfNoPlateInParticularSaysThatItIsOfAll() {
    assertThat(run("note", "windows.json", "--off", "--at", "+20h"))
        .contains("all plates of the pour: off the plate, +20h");
    assertThat(run("note", "windows.json", "--off", "--of", "2", "--at", "+20h"))
        .contains("  plate 2 off the plate, +20h");
  }

  @Test
  void confirmsTheWeighingOfThePlateThatIsNamed() throws IOException {
    run("note", "windows.json", "--weighed", "6h=719g");
    run("note", "windows.json", "--of", "2", "--weighed", "6h=721g");

    assertThat(run("note", "windows.json", "--confirm", "6h", "--of", "2"))
        .contains("plate 2, weighing of +6h confirmed");
    assertThat(JSON.readTree(folder.resolve("windows.json").toFile()).at("/weighings").toString())
        .contains("{\"at\":\"+6h\",\"mass_g\":719,\"plate\":1}")
        .contains("\"mass_g\":721,\"plate\":2,\"confirmed\":true");
    assertThat(Outcome.of(folder, "note", "windows.json", "--confirm", "6h").err())
        .contains("several weighings at +6h given, allowed one weighing", "such as --of 2");
    assertThat(Outcome.of(folder, "note", "windows.json", "--confirm", "6h", "--of", "3").err())
        .contains("no weighing of plate 3 at +6h given");
  }

  @Test
  void asksAboutAnOddWeighingByThePlateItIsOf() throws IOException {
    for (String weighed : List.of("4h=746g", "10h=700g", "20h=650g")) {
      run("note", "windows.json", "--of", "2", "--weighed", weighed);
    }
    String odd = run("today", ".").replaceAll("\\s+", " ");

    assertThat(odd).contains("(note FILE --confirm 4h --of 2)");
  }

  @Test
  void aWeighingAfterLearnCountsNoMoreThanBefore() throws IOException {
    run("note", "windows.json", "--weighed", "6h=719g", "--weighed", "20h=651g");
    JsonNode before = plate(3);
    run("learn", ".");

    assertThat(middle(plate(3))).isEqualTo(middle(before));
    assertThat(width(plate(3))).isEqualTo(width(before));
  }

  @Test
  void aMeasuredFilmIsOffItsPlateAndTheOthersDryOn() throws IOException {
    assertThat(run("note", "windows.json", "--of", "2", "--thickness", "112; 118"))
        .contains("plate 2 dry thickness 112 µm")
        .contains("plate 2 dry thickness 118 µm");

    assertThat(today()).hasSize(1);
    assertThat(today().get(0).path("numbers").asText()).isEqualTo("1, 3");
    run("note", "windows.json", "--of", "3", "--pull", "9.4N", "--width", "10mm");
    assertThat(today().get(0).path("numbers").asText()).isEqualTo("1");
    run("note", "windows.json", "--undo");
    assertThat(today().get(0).path("numbers").asText()).isEqualTo("1, 3");
  }

  @Test
  void aStripTakesTheThicknessOfItsPlate() throws IOException {
    run("note", "windows.json", "--of", "1", "--thickness", "100");
    run("note", "windows.json", "--of", "2", "--thickness", "200");
    run("note", "windows.json", "--of", "2", "--pull", "10N", "--width", "10mm");
    run("note", "windows.json", "--of", "1", "--pull", "10N", "--width", "10mm");
    run("compare", "windows.json", "--out", "page.html");

    // 10 N over 10 mm times 0.1 and 0.2 mm are 10 and 5 MPa; their mean is 7.5, and the standard
    // deviation of two values is their difference over the square root of two.
    List<String> told =
        Files.readString(folder.resolve("page.html"))
            .lines()
            .filter(line -> line.contains("Between the plates"))
            .map(line -> line.replaceAll("<[^>]*>", "").replace('\u00A0', ' '))
            .toList();
    assertThat(told)
        .contains(
            "Between the plates: thickness 100 µm (plate 1), 200 µm (plate 2); mean 150 µm,"
                + " standard deviation 71 µm.",
            "Between the plates: tensile strength 10 MPa (plate 1), 5 MPa (plate 2); mean 7.5"
                + " MPa, standard deviation 3.5 MPa.");
  }

  @Test
  void eachThicknessCanBeCorrectedAndRemoved() throws IOException {
    run("note", "windows.json", "--of", "2", "--thickness", "112; 118");
    run("note", "windows.json", "--replace", "plate 2=0.121 mm", "--drop", "plate 1");

    assertThat(run("note", "windows.json", "--list").strip())
        .isEqualTo("plate 1: plate 2 dry thickness 121 µm");
  }

  @Test
  void aThicknessOfAPlateThatWasNotPouredIsRefused() throws IOException {
    String before = Files.readString(file);
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("note", "windows.json", "--of", "4", "--thickness", "112"))
        .isEqualTo(2);
    assertThat(terminal.err()).contains("plate 4 given, allowed plate 1 to 3, as poured");
    assertThat(Files.readString(file)).isEqualTo(before);
  }
}
