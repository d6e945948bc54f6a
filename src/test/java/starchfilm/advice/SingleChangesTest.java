package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.advice.SingleChanges.SingleChange;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.FaceChange;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Setting;
import starchfilm.casting.SwingingRoom;

/** Which differences between two trials are told, and which are the same thing done again. */
class SingleChangesTest {
  /** Figures that come out alike when a person does it again: 4 %, 2 K, 3 points of humidity. */
  @ParameterizedTest
  @CsvSource({
    "WATER, 0.3, 0.5, dry starch in the paste",
    "GLYCEROL, 0.01, 0.015, glycerol per 100 g dry starch",
    "SALT, 0.005, 0.015, salt of the dry solids",
    "VINEGAR, 0.009, 0.011, acid per 100 g dry starch",
    "COOK_TEMPERATURE, 1.9, 2.1, top of the cook",
    "COOK_TIME, 35, 39, time of the cook",
    "WET_THICKNESS, 0.12e-3, 0.13e-3, wet thickness",
    "UNEVENNESS, 0.019, 0.021, unevenness",
    "PASTE_TEMPERATURE, 1.9, 2.1, paste when poured",
    "AIR_TEMPERATURE, 0.4, 2.1, room",
    "HUMIDITY, 0.029, 0.031, room",
    "AIR_SPEED, 0.004, 0.0045, room",
  })
  void onlyADifferenceThatDoingItAgainDoesNotMakeIsTold(
      Setting setting, double same, double different, String what) {
    assertThat(after(setting, same)).isEmpty();
    List<SingleChange> told = after(setting, different);
    assertThat(told).extracting(SingleChange::what).containsExactly(what);
    assertThat(setting.of(told.get(0).alone().setup()))
        .isCloseTo(setting.of(Castings.USUAL) + different, within(1e-9));
  }

  private static List<SingleChange> after(Setting setting, double by) {
    Casting changed = setting.set(Castings.USUAL, setting.of(Castings.USUAL) + by);
    return found(changed);
  }

  @Test
  void eachDifferenceIsSetAlone() {
    Casting changed =
        Setting.GLYCEROL.set(Castings.USUAL, 0.5).pouredTo(2e-3).with(Castings.use(0.7, 23, 7));
    List<SingleChange> told = found(changed);
    assertThat(told)
        .extracting(SingleChange::what)
        .containsExactly("glycerol per 100 g dry starch", "wet thickness", "used at");
    assertThat(told.get(0).alone().setup().wetThicknessM())
        .isEqualTo(Castings.USUAL.wetThicknessM());
    assertThat(Setting.GLYCEROL.of(told.get(1).alone().setup()))
        .isEqualTo(Setting.GLYCEROL.of(Castings.USUAL));
    assertThat(told.get(1).from()).isEqualTo("3 mm");
    assertThat(told.get(1).to()).isEqualTo("2 mm");
  }

  @Test
  void plateTurnsAndRoomsThatSwingAreComparedAsTheyAreTold() {
    Casting racked =
        Castings.USUAL.with(List.of(new FaceChange(36_000, FaceChange.OpenFaces.BOTH)));
    assertThat(found(racked))
        .singleElement()
        .satisfies(
            told -> {
              assertThat(told.what()).isEqualTo("turned or racked");
              assertThat(told.from() + " → " + told.to())
                  .isEqualTo("no → on a rack after 10 hours");
              assertThat(told.alone().setup().faces()).isEqualTo(racked.faces());
            });
    Casting swinging = in(new SwingingRoom(Castings.USUAL.room().at(0), 3, 0.1, 0));
    assertThat(found(swinging)).extracting(SingleChange::what).containsExactly("room");
    Casting further = in(new SwingingRoom(Castings.USUAL.room().at(0), 6, 0.1, 0));
    assertThat(
            SingleChanges.between(
                    SeenFaults.on(swinging), SeenFaults.on(swinging), RuleBook.packed().compared())
                .found())
        .isEmpty();
    assertThat(
            SingleChanges.between(
                    SeenFaults.on(swinging), SeenFaults.on(further), RuleBook.packed().compared())
                .found())
        .extracting(SingleChange::what)
        .containsExactly("room");
    assertThat(found(Castings.USUAL.with(Castings.GLASS.of(PlateMaterial.STEEL))))
        .extracting(SingleChange::what)
        .containsExactly("plate");
  }

  private static Casting in(SwingingRoom room) {
    return Castings.USUAL.with(new DryingPlace(room, OptionalDouble.empty()));
  }

  private static List<SingleChange> found(Casting changed) {
    return SingleChanges.between(
            SeenFaults.on(Castings.USUAL), SeenFaults.on(changed), RuleBook.packed().compared())
        .found();
  }
}
