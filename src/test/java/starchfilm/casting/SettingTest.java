package starchfilm.casting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.material.air.AirState;
import starchfilm.material.air.WagnerPruss1993;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** What setting one figure of a casting does to it, and leaves alone. */
class SettingTest {
  private static final Composition SALTY_AND_SOUR =
      new Composition(Map.of(StarchKind.RICE, 1.0), 0.08, 0.024, 0.004, 0.006, 0.886, 0);

  private static final Casting CASTING =
      Castings.plate(3, SALTY_AND_SOUR, Castings.room(20, 50, 0.1), 60);

  /** More starch in the same water is a thicker paste; warmed air keeps its vapour. */
  private static final Map<Setting, Set<Setting>> BOUND =
      Map.of(
          Setting.STARCH,
          EnumSet.of(
              Setting.CONCENTRATION,
              Setting.GLYCEROL,
              Setting.WATER,
              Setting.VINEGAR,
              Setting.SALT),
          Setting.CONCENTRATION,
          EnumSet.of(Setting.STARCH, Setting.WATER),
          Setting.GLYCEROL,
          EnumSet.of(Setting.STARCH, Setting.CONCENTRATION),
          Setting.WATER,
          EnumSet.of(Setting.STARCH, Setting.CONCENTRATION),
          Setting.VINEGAR,
          EnumSet.of(Setting.STARCH, Setting.CONCENTRATION),
          Setting.SALT,
          EnumSet.of(Setting.STARCH, Setting.CONCENTRATION),
          Setting.AIR_TEMPERATURE,
          EnumSet.of(Setting.HUMIDITY));

  @ParameterizedTest
  @EnumSource(Setting.class)
  void setsWhatItSaysAndNothingElse(Setting setting) {
    double from = setting.of(CASTING);
    Casting changed = setting.set(CASTING, 1.05 * from);
    // An amount is counted beside what the paste held before, so dry starch is counted otherwise.
    if (setting != Setting.STARCH) {
      assertThat(setting.of(changed)).isCloseTo(1.05 * from, within(1e-9 * from));
    }
    for (Setting other : Setting.values()) {
      if (other != setting && !BOUND.getOrDefault(setting, Set.of()).contains(other)) {
        assertThat(other.of(changed))
            .as("%s", other)
            .isCloseTo(other.of(CASTING), within(1e-9 * other.of(CASTING)));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void settingWhatItIsChangesNothing(Setting setting) {
    assertSame(setting.set(CASTING, setting.of(CASTING)));
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void thereAndBackIsTheSameCasting(Setting setting) {
    double from = setting.of(CASTING);
    Casting there = setting.set(CASTING, 1.05 * from);
    // Dry starch is set beside what a kilogram of the changed paste holds.
    double back = setting == Setting.STARCH ? setting.of(there) / 1.05 : from;
    assertSame(setting.set(there, back));
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void onlyAirThatStaysTheSameCanBeSet(Setting setting) {
    AirState mean = new AirState(293.15, 0.5, 0.1);
    Casting swinging = CASTING.with(CASTING.place().with(new SwingingRoom(mean, 5, 0.1, 0)));
    assertThat(setting.isFree(CASTING)).isTrue();
    assertThat(setting.isFree(swinging))
        .isEqualTo(
            !EnumSet.of(Setting.AIR_TEMPERATURE, Setting.HUMIDITY, Setting.AIR_SPEED)
                .contains(setting));
  }

  @ParameterizedTest
  @EnumSource(
      value = Setting.class,
      names = {"AIR_TEMPERATURE"})
  void warmedAirKeepsItsVapour(Setting setting) {
    WagnerPruss1993 saturation = new WagnerPruss1993();
    Casting warmed = setting.set(CASTING, 298.15);
    assertThat(Setting.HUMIDITY.of(warmed) * saturation.pa(298.15))
        .isCloseTo(0.5 * saturation.pa(293.15), within(1e-9));
  }

  private static void assertSame(Casting changed) {
    for (Setting each : Setting.values()) {
      assertThat(each.of(changed))
          .as("%s", each)
          .isCloseTo(each.of(CASTING), within(1e-9 * each.of(CASTING)));
    }
    assertThat(changed.plate()).isEqualTo(CASTING.plate());
    assertThat(changed.use()).isEqualTo(CASTING.use());
    assertThat(changed.faces()).isEqualTo(CASTING.faces());
  }
}
