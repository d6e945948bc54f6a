package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;

/** On which side each printed threshold lies, word for word as its class says it. */
class ThresholdsTest {
  private static final AcidEffect NO_ACID = new AcidEffect(7, new Band(0, 0, 0), new Band(1, 1, 1));

  /**
   * "x below -5 K", "x below 6 K", "x of 26 K or more"; the plasticiser's own limit comes first.
   */
  @ParameterizedTest
  @CsvSource({
    "-5.001, false, BRITTLE",
    "-5, false, STIFF",
    "5.999, false, STIFF",
    "6, false, FLEXIBLE",
    "25.999, false, FLEXIBLE",
    "26, false, STRETCHY",
    "-40, true, STICKY"
  })
  void feel(double aboveGlassK, boolean sticky, Feel feel) {
    assertThat(FeelInTheHand.of(aboveGlassK, sticky)).isEqualTo(feel);
  }

  @ParameterizedTest
  @CsvSource({
    "0.0249, 0.5, ANTIPLASTICISED, false",
    "0.025, 0.5, ANTIPLASTICISED, true",
    "0.15, 0.5, ANTIPLASTICISED, true",
    "0.1501, 0.5, ANTIPLASTICISED, false",
    "0.1, 0.58, ANTIPLASTICISED, true",
    "0.1, 0.581, ANTIPLASTICISED, false",
    "0.2999, 0.5, MAY_SEPARATE, false",
    "0.3, 0.5, MAY_SEPARATE, true",
    "0.5, 0.5, MAY_SEPARATE, true",
    "0.5, 0.5, SEPARATES, false",
    "0.5001, 0.5, SEPARATES, true",
    "0.5, 0.5, MAY_SWEAT, false",
    "0.5001, 0.5, MAY_SWEAT, true",
    "0.425, 0.5, TACKY, false",
    "0.4251, 0.5, TACKY, true",
    "0.1999, 0.5, MAY_CRACK_OFF, true",
    "0.2001, 0.5, MAY_CRACK_OFF, false"
  })
  void plasticiser(double level, double humidity, FilmCaution caution, boolean warned) {
    FilmState film = film(level, 0, humidity);
    assertThat(cautions(film, 400, usual(), 95, 1e-4).contains(caution)).isEqualTo(warned);
  }

  @ParameterizedTest
  @CsvSource({
    "0.02, false, false",
    "0.0201, true, false",
    "0.05, true, false",
    "0.0501, false, true"
  })
  void salt(double share, boolean noticeable, boolean high) {
    List<FilmCaution> cautions = cautions(film(0.25, share, 0.5), 400, usual(), 95, 1e-4);
    assertThat(cautions.contains(FilmCaution.SALT_NOTICEABLE)).isEqualTo(noticeable);
    assertThat(cautions.contains(FilmCaution.SALT_HIGH)).isEqualTo(high);
  }

  /** 100 K below its glass transition and further it breaks at its first flaw. */
  @ParameterizedTest
  @CsvSource({"-99.9, false", "-100.1, true", "-150, true"})
  void veryDryFilmBreaksAtItsFlaws(double aboveGlassK, boolean warned) {
    FilmState room = film(0, 0, 0.1);
    FilmState film =
        new FilmState(
            0, 0.25, 0, 0, 0.1, 0.1, room.temperatureK() - room.aboveGlassK() + aboveGlassK);
    assertThat(cautions(film, 400, usual(), 95, 1e-4).contains(FilmCaution.BREAKS_AT_FLAWS))
        .isEqualTo(warned);
  }

  /** Beuchat 1981: moulds grow from 75 to 80 % relative humidity. */
  @ParameterizedTest
  @CsvSource({"0.5, false", "0.75, false", "0.7501, true", "0.9, true"})
  void filmKeptDampMoulds(double humidity, boolean warned) {
    assertThat(
            cautions(film(0.25, 0, humidity), 400, usual(), 95, 1e-4)
                .contains(FilmCaution.MOULDS_IN_USE))
        .isEqualTo(warned);
  }

  /** Random scission, {@code 1/DPw = 1e-6 + s/2}: 18 cuts per million bonds leave a tenth. */
  @ParameterizedTest
  @CsvSource({"0.101, false", "0.099, true"})
  void pasteThinsWhereATenthOfTheAmylopectinIsLeft(double lengthLeft, boolean warned) {
    double cuts = 2e-6 * (1 / lengthLeft - 1);
    AcidEffect acid = new AcidEffect(3, new Band(cuts, cuts, cuts), new Band(1, 1, 1));
    assertThat(acid.amylopectinLengthLeft()).isCloseTo(lengthLeft, within(1e-9));
    Casting casting = Castings.film(usual()).with(Castings.cook(15, 95));
    assertThat(
            new FilmCautions(casting, film(0.25, 0, 0.5), 400, acid, 1e-4)
                .all()
                .contains(FilmCaution.PASTE_THINS))
        .isEqualTo(warned);
  }

  @Test
  void onlyAGlassCracksOffAndOnlyAThickFilmIsThick() {
    FilmState film = film(0.1, 0, 0.5);
    assertThat(cautions(film, Castings.ROOM_K, usual(), 95, 1e-4))
        .doesNotContain(FilmCaution.MAY_CRACK_OFF);
    assertThat(cautions(film, Castings.ROOM_K + 0.1, usual(), 95, 1e-4))
        .contains(FilmCaution.MAY_CRACK_OFF);
    // What is shown as 50 um is not under 50 um.
    assertThat(cautions(film, 400, usual(), 95, 49.6e-6)).doesNotContain(FilmCaution.THIN_FILM);
    assertThat(cautions(film, 400, usual(), 95, 49.4e-6)).contains(FilmCaution.THIN_FILM);
    assertThat(cautions(film, 400, usual(), 95, 0.3e-3)).doesNotContain(FilmCaution.THICK_FILM);
    assertThat(cautions(film, 400, usual(), 95, 0.301e-3)).contains(FilmCaution.THICK_FILM);
  }

  /**
   * Half a kelvin later for each per cent of glycerol in the liquid: 60 g glycerol, 20 g acid and
   * 840 g water are 6.52 %, so corn, 75 °C, is done at 78.26 °C.
   */
  @ParameterizedTest
  @CsvSource({"78.2, true", "78.3, false"})
  void glycerolDelaysTheEndOfTheCook(double celsius, boolean undercooked) {
    Composition paste = new Composition(Map.of(StarchKind.CORN, 1.0), 0.08, 0.06, 0, 0.02, 0.84, 0);
    assertThat(
            cautions(film(0.75, 0, 0.5), 300, paste, celsius, 1e-4)
                .contains(FilmCaution.UNDERCOOKED))
        .isEqualTo(undercooked);
  }

  /** A trace of 2 % of another starch does not set the cook; 3 % does. */
  @Test
  void aTraceOfStarchNeedsNoCookOfItsOwn() {
    assertThat(blend(0.02)).doesNotContain(FilmCaution.NEEDS_PRESSURE_COOK);
    assertThat(blend(0.03)).contains(FilmCaution.NEEDS_PRESSURE_COOK);
  }

  private static List<FilmCaution> blend(double share) {
    Composition paste =
        new Composition(
            Map.of(StarchKind.POTATO, 1 - share, StarchKind.HIGH_AMYLOSE_CORN, share),
            0.03,
            0,
            0,
            0,
            0.97,
            0);
    return cautions(film(0.25, 0, 0.5), 300, paste, 95, 1e-4);
  }

  @ParameterizedTest
  @CsvSource({
    "0.02, false, false, false",
    "0.0199, true, false, false",
    "0.04, false, false, false",
    "0.0401, false, true, false",
    "0.05, false, true, false",
    "0.0501, false, true, true",
    "0, false, false, false"
  })
  void body(double starch, boolean settles, boolean tooThick, boolean clearly) {
    PasteBody body = new PasteBody(starch, 0.02, 0.04);
    assertThat(body.settles()).isEqualTo(settles);
    assertThat(body.tooThickToLevel()).isEqualTo(tooThick);
    assertThat(body.clearlyTooThickToLevel()).isEqualTo(clearly);
  }

  /** 42.5 g at 50 %, 35 g at 75 %; 20 g at 50 %, 25 g at 35 %; straight between, level beyond. */
  @Test
  void theWindowIsStraightBetweenItsPrintedPoints() {
    assertThat(PlasticiserWindow.tackyAbove(0.2)).isCloseTo(0.425, within(1e-12));
    assertThat(PlasticiserWindow.tackyAbove(0.6)).isCloseTo(0.395, within(1e-12));
    assertThat(PlasticiserWindow.cracksBelow(0.425)).isCloseTo(0.225, within(1e-12));
    assertThat(PlasticiserWindow.cracksBelow(0.2)).isCloseTo(0.25, within(1e-12));
    assertThat(PlasticiserWindow.cracksBelow(0.6)).isCloseTo(0.20, within(1e-12));
  }

  private static Composition usual() {
    return Castings.paste(StarchKind.POTATO, 0.03, 0.25, 0, 0);
  }

  private static FilmState film(double plasticiser, double salt, double humidity) {
    return new FilmState(
        plasticiser / (1 + plasticiser), 0.25, salt, 0, 0.1, humidity, Castings.ROOM_K);
  }

  private static List<FilmCaution> cautions(
      FilmState film, double glassK, Composition paste, double cookedC, double dryM) {
    Casting filmCase =
        Castings.film(paste)
            .with(Castings.cook(15, cookedC))
            .with(new Use(film.relativeHumidity(), Castings.ROOM_K, 0));
    return new FilmCautions(filmCase, film, glassK, NO_ACID, dryM).all();
  }
}
