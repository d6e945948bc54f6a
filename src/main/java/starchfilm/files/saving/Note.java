package starchfilm.files.saving;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import starchfilm.casting.FaceChange;
import starchfilm.casting.trial.ObservedFault;

/**
 * One thing to write into a trial file, in the units of its fields and with the digits as typed:
 * the last one says how fine the scale was.
 */
public sealed interface Note {
  /**
   * The pour.
   *
   * @param at when, as {@code poured_at} keeps it, if it is to be noted
   * @param pouredG paste on one plate (g), if weighed
   * @param tareG the empty plate (g), if weighed
   */
  record Poured(Optional<String> at, Optional<BigDecimal> pouredG, Optional<BigDecimal> tareG)
      implements Note {}

  /**
   * A weighing.
   *
   * @param at when, as {@code at} keeps it
   * @param massG what the scale showed (g)
   * @param withPlate whether the plate was on the scale, if it is to be said
   * @param samePlate whether it was the plate weighed before; to be said where the film gained more
   *     than a drying film can
   * @param plate the plate's number, where the pour has several; else the first
   */
  record Weighed(
      String at,
      BigDecimal massG,
      Optional<Boolean> withPlate,
      Optional<Boolean> samePlate,
      OptionalInt plate)
      implements Note {
    /** A weighing of the first plate. */
    public Weighed(
        String at, BigDecimal massG, Optional<Boolean> withPlate, Optional<Boolean> samePlate) {
      this(at, massG, withPlate, samePlate, OptionalInt.empty());
    }

    /**
     * The same weighing, of another plate of the pour.
     *
     * @param number the plate's number; empty for the first
     * @return the note
     */
    public Weighed ofPlate(OptionalInt number) {
      return new Weighed(at, massG, withPlate, samePlate, number);
    }

    /**
     * The same weighing, with the plate told.
     *
     * @param same whether it was the plate weighed before
     * @return the note
     */
    public Weighed onSamePlate(boolean same) {
      return new Weighed(at, massG, withPlate, Optional.of(same), plate);
    }
  }

  /**
   * An empty plate that weighs other than the rest.
   *
   * @param plate the plate's number
   * @param tareG its mass (g)
   */
  record Tared(int plate, BigDecimal tareG) implements Note {}

  /**
   * A plate is done.
   *
   * @param plate the plate's number; empty for all plates of the pour
   * @param at when, as {@code off_at} keeps it
   * @param givenUp why it was given up; empty where its film came off
   */
  record Ended(OptionalInt plate, String at, Optional<String> givenUp) implements Note {}

  /**
   * What was really weighed out of something that goes into the pot.
   *
   * @param what what it is, such as {@code potato starch}
   * @param field the field its mass stands in, from the outside in
   * @param massG its mass (g)
   */
  record WeighedOut(String what, List<String> field, BigDecimal massG) implements Note {
    /** Copies the list. */
    public WeighedOut {
      field = List.copyOf(field);
    }
  }

  /**
   * A weighing noted before is right, however odd it looks.
   *
   * @param at when it was weighed, as {@code at} keeps it
   */
  record Confirmed(String at) implements Note {}

  /**
   * The dry film's thickness, measured in one place.
   *
   * @param um micrometres
   */
  record Thickness(BigDecimal um) implements Note {}

  /**
   * A strip pulled until it broke.
   *
   * @param load load at break, in the unit of its field
   * @param loadInKg true where the load is a mass that hung on it (kg), false for newtons
   * @param widthMm width of the strip (mm)
   * @param thicknessUm thickness of the strip (um), if measured
   * @param stretchPct stretch at break (%), if measured
   */
  record Pulled(
      BigDecimal load,
      boolean loadInKg,
      BigDecimal widthMm,
      Optional<BigDecimal> thicknessUm,
      Optional<BigDecimal> stretchPct)
      implements Note {}

  /**
   * Something that went wrong.
   *
   * @param kind what
   * @param where where on the plate
   * @param at when, as {@code at} keeps it, if noted
   * @param remark in the maker's words, if noted
   */
  record WentWrong(
      ObservedFault.Kind kind,
      ObservedFault.Place where,
      Optional<String> at,
      Optional<String> remark)
      implements Note {}

  /**
   * The cook.
   *
   * @param minutes time at the top temperature (min), if noted
   * @param topC top temperature (degrees Celsius), if noted
   * @param waterLostG weight the pot lost (g), if noted
   */
  record Cooked(
      Optional<BigDecimal> minutes, Optional<BigDecimal> topC, Optional<BigDecimal> waterLostG)
      implements Note {}

  /**
   * Peeled, turned or put on a rack.
   *
   * @param at when, as {@code at} keeps it
   * @param open which faces are open from then on
   */
  record Moved(String at, FaceChange.OpenFaces open) implements Note {}

  /**
   * A line noted before is taken out; pictures stay beside the file.
   *
   * @param line the line as it was looked at
   */
  record Dropped(NotedLine line) implements Note {}

  /**
   * A line noted before gets another value.
   *
   * @param line the line as it was looked at
   * @param value its new value, in the unit of its field
   */
  record Corrected(NotedLine line, String value) implements Note {}

  /**
   * The trial is put away, so that no list, comparison or lesson has it, or fetched back.
   *
   * @param away true to put it away
   */
  record PutAway(boolean away) implements Note {}

  /**
   * The maker's rating.
   *
   * @param stars 1 to 5
   */
  record Rated(int stars) implements Note {}

  /**
   * A remark.
   *
   * @param words in the maker's words
   */
  record Remarked(String words) implements Note {}

  /**
   * A photo beside the trial file.
   *
   * @param name its name from the trial's folder on, with / between folders
   * @param at when it was taken, as {@code at} keeps it, if known
   * @param caption what it shows, if said
   * @param plate which plate it shows, if said
   */
  record Photographed(String name, Optional<String> at, Optional<String> caption, OptionalInt plate)
      implements Note {
    /** A photo of which nothing else is said. */
    public Photographed(String name) {
      this(name, Optional.empty(), Optional.empty(), OptionalInt.empty());
    }
  }

  /**
   * Several notes at once, written together or not at all.
   *
   * @param notes the notes, in order
   */
  record Several(List<Note> notes) implements Note {
    /** Copies the list. */
    public Several {
      notes = List.copyOf(notes);
    }

    /**
     * The same notes, with the plate told for every weighing.
     *
     * @param same whether it was the plate weighed before
     * @return the notes
     */
    public Several onSamePlate(boolean same) {
      return new Several(
          notes.stream()
              .map(note -> note instanceof Weighed weighed ? weighed.onSamePlate(same) : note)
              .toList());
    }
  }
}
