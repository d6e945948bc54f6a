package starchfilm.learning;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.FaceChange;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.Plate;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Estimate;

/**
 * A mark of everything in a trial that learning reads, by which an edited trial is known: its
 * figures as the model takes them, to seven digits, so that they are the same on every machine. Its
 * name, remarks, photos and faults, and how its file is written, are not in it.
 *
 * @param file the trial's file, from the folder of the workshop file
 * @param checksum CRC-32 of the figures, eight hexadecimal digits
 */
record TrialFacts(String file, String checksum) {
  private static final Pattern CHECKSUM = Pattern.compile("[0-9a-f]{8}");

  TrialFacts {
    if (!CHECKSUM.matcher(checksum).matches()) {
      throw new IllegalArgumentException("no checksum: " + checksum);
    }
  }

  /** The facts of all trials that can teach. */
  static List<TrialFacts> ofAll(Path folder, List<Trial> trials) {
    return trials.stream()
        .filter(trial -> !(trial.weighedPlates().isEmpty() && trial.seen().pulls().isEmpty()))
        .flatMap(trial -> of(folder, trial).stream())
        .toList();
  }

  /**
   * The facts of a trial.
   *
   * @param folder where the workshop file lies
   * @return its facts; empty where it has a figure that no model takes
   */
  static Optional<TrialFacts> of(Path folder, Trial trial) {
    Sum sum = new Sum();
    try {
      if (!trial.weighedPlates().isEmpty()) {
        addPlate(sum, trial);
      }
      if (!trial.seen().pulls().isEmpty()) {
        addStrips(sum, trial);
      }
    } catch (IllegalArgumentException impossible) {
      // Nothing can be learnt from it either; the sentence is told where it is forecast.
      return Optional.empty();
    }
    return Optional.of(new TrialFacts(TrialName.from(folder, trial), sum.hex()));
  }

  private static void addPlate(Sum sum, Trial trial) {
    Casting drying = trial.casting();
    DryingLimits.require(drying);
    addPaste(sum, drying.composition());
    sum.add(drying.paste().solidsRelativeSd(), drying.paste().plasticiserRelativeSd());
    Plate plate = drying.plate();
    sum.add(plate.material().tradeName());
    sum.add(plate.lengthM(), plate.widthM(), plate.thicknessM(), plate.rimHeightM());
    sum.add(drying.pour().wetThicknessM());
    sum.add(drying.pour().unevenness(), drying.pour().pasteTemperatureK());
    sum.add(drying.pour().weighedKg().isPresent() ? 1 : 0);
    sum.add(RoomLearnt.key(drying.place().name()));
    addRoom(sum, drying.room());
    RoomUncertainty doubt = drying.place().uncertainty();
    sum.add(doubt.temperatureSdK(), doubt.humiditySd(), doubt.speedRelativeSd());
    sum.add(drying.benchTemperatureK());
    for (FaceChange change : drying.faces()) {
      sum.add(change.timeS());
      sum.add(change.open().name());
    }
    for (Weighing weighing : trial.seen().weighings()) {
      sum.add(weighing.timeS(), weighing.filmMassKg(), weighing.massSdKg());
    }
    trial
        .seen()
        .eachPlate()
        .weighings()
        .forEach(
            (number, weighings) -> {
              sum.add(number);
              weighings.forEach(w -> sum.add(w.timeS(), w.filmMassKg(), w.massSdKg()));
            });
  }

  private static void addStrips(Sum sum, Trial trial) {
    Casting film = trial.casting();
    addPaste(sum, film.composition());
    Cook cook = film.cook();
    sum.add(cook.durationS());
    sum.add(cook.topTemperatureK());
    sum.add(film.pour().wetThicknessM());
    sum.add(film.use().relativeHumidity(), film.use().temperatureK(), film.use().ageS());
    for (PullTest pull : trial.seen().pulls()) {
      sum.add(pull.loadN(), pull.widthM(), pull.thicknessM());
      sum.add(pull.stretchAtBreak());
    }
  }

  private static void addPaste(Sum sum, Composition paste) {
    paste
        .starchShares()
        .forEach(
            (kind, share) -> {
              sum.add(kind.tradeName());
              sum.add(share);
            });
    sum.add(paste.dryStarch(), paste.glycerol(), paste.salt(), paste.aceticAcid(), paste.water());
  }

  private static void addRoom(Sum sum, Room room) {
    Runnable add =
        room.map(
            constant -> () -> addConstant(sum, constant),
            swinging -> () -> addSwing(sum, swinging),
            logged -> () -> addLog(sum, logged));
    add.run();
  }

  private static void addConstant(Sum sum, ConstantRoom room) {
    sum.add("constant");
    addAir(sum, room.air());
  }

  private static void addSwing(Sum sum, SwingingRoom room) {
    sum.add("swing");
    addAir(sum, room.mean());
    sum.add(room.temperatureHalfSwingK(), room.humidityHalfSwing(), room.warmestAfterPourS());
  }

  private static void addLog(Sum sum, LoggedRoom room) {
    sum.add("log");
    sum.add(room.speedMPerS());
    for (LoggedRoom.Reading reading : room.readings()) {
      sum.add(reading.timeS(), reading.temperatureK(), reading.relativeHumidity());
    }
  }

  private static void addAir(Sum sum, AirState air) {
    sum.add(air.temperatureK(), air.relativeHumidity(), air.speedMPerS());
  }

  /** Adds figure after figure; each is told from the next, words by their end. */
  private static final class Sum {
    private final CRC32 crc = new CRC32();
    private final ByteBuffer four = ByteBuffer.allocate(Float.BYTES);

    void add(double... figures) {
      for (double figure : figures) {
        // The last digits of a double may differ between machines, and nobody edits those.
        crc.update(four.clear().putFloat((float) figure).flip());
      }
    }

    void add(Estimate figure) {
      add(figure.value(), figure.sd());
    }

    void add(OptionalDouble figure) {
      add(figure.orElse(Double.NaN));
    }

    void add(String word) {
      crc.update(word.getBytes(StandardCharsets.UTF_8));
      crc.update(0);
    }

    String hex() {
      return HexFormat.of().toHexDigits(crc.getValue(), 8);
    }
  }
}
