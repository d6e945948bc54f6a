package starchfilm.learning;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.summary.RoomLearnt;

/**
 * A mark of everything in a trial that learning reads, by which an edited trial is known: its
 * casting, weighings and pulled strips as the model takes them, whatever their records hold, to
 * seven digits, so that they are the same on every machine. Its name, remarks, photos and faults,
 * and how its file is written, are not in it.
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
        DryingLimits.require(trial.casting());
      }
      sum.add(trial.casting());
      trial.weighedPlates().forEach(plate -> sum.add(plate.seen().weighings()));
      sum.add(trial.seen().pulls());
      if (trial.plates() > 1) {
        trial.weighedPlates().forEach(plate -> sum.add(plate.seen().eachPlate().shown()));
        trial
            .seen()
            .eachPlate()
            .films()
            .forEach((plate, film) -> sum.add(List.of(plate, film.pulls())));
      }
    } catch (IllegalArgumentException impossible) {
      // Nothing can be learnt from it either; the sentence is stated where it is forecast.
      return Optional.empty();
    }
    return Optional.of(new TrialFacts(TrialName.from(folder, trial), sum.hex()));
  }

  /** Adds records, component by component, so that none is left out; words end with a zero. */
  private static final class Sum {
    private final CRC32 crc = new CRC32();

    void add(Object part) {
      if (part instanceof Record record) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
          add(of(record, component));
        }
      } else if (part instanceof Iterable<?> list) {
        list.forEach(this::add);
        add("end");
      } else if (part instanceof Map<?, ?> map) {
        map.entrySet().stream()
            .sorted(Comparator.comparing(entry -> entry.getKey().toString()))
            .forEach(
                entry -> {
                  add(entry.getKey());
                  add(entry.getValue());
                });
      } else if (part instanceof Double figure) {
        // The last digits of a double may differ between machines, and nobody edits those.
        add(Float.toString(figure.floatValue()));
      } else if (part instanceof OptionalDouble figure) {
        add(figure.isPresent() ? figure.getAsDouble() : "none");
      } else if (part instanceof Optional<?> optional) {
        add(optional.stream().toList());
      } else {
        // The only name in a casting is its room's, which is the same in capitals.
        String word = part instanceof String name ? RoomLearnt.key(name) : part.toString();
        crc.update(word.getBytes(StandardCharsets.UTF_8));
        crc.update(0);
      }
    }

    private static Object of(Record record, RecordComponent component) {
      Method accessor = component.getAccessor();
      try {
        return accessor.invoke(record);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(accessor + " cannot be called", e);
      }
    }

    String hex() {
      return HexFormat.of().toHexDigits(crc.getValue(), 8);
    }
  }
}
