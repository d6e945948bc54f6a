package starchfilm.files.saving;

import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FileWord;

/** Puts notes into the text of a trial file, everything else in it left as it stands. */
final class NoteText {
  // Numbers go in as decimal nodes: the digits typed say how fine the scale was.
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private NoteText() {}

  static String with(String text, Note note) throws UnreadableFileException {
    if (note instanceof Note.Several several) {
      String all = text;
      for (Note one : several.notes()) {
        all = with(all, one);
      }
      return all;
    }
    if (note instanceof Note.Poured poured) {
      String at = poured.at().isPresent() ? pouredAt(text, poured.at().get()) : text;
      String mass = set(at, poured.pouredG(), "pour", "poured_g");
      return set(mass, poured.tareG(), "pour", "plate", "tare_g");
    }
    if (note instanceof Note.Cooked cooked) {
      String minutes = set(text, cooked.minutes(), "cook", "minutes");
      String top = set(minutes, cooked.topC(), "cook", "top_C");
      return set(top, cooked.waterLostG(), "cook", "water_lost_g");
    }
    if (note instanceof Note.Rated rated) {
      return TextEdit.set(text, List.of("rating"), IntNode.valueOf(rated.stars()));
    }
    if (note instanceof Note.Thickness thickness) {
      return TextEdit.append(text, "dry_thickness_um", DecimalNode.valueOf(thickness.um()));
    }
    if (note instanceof Note.Remarked remarked) {
      return TextEdit.append(text, "remarks", TextNode.valueOf(remarked.words()));
    }
    if (note instanceof Note.Photographed photo) {
      String with = TextEdit.append(text, "photos", TextNode.valueOf(photo.name()));
      ObjectNode entry = entry(photo);
      return entry.size() > 1 ? TextEdit.append(with, "photo_notes", entry) : with;
    }
    if (note instanceof Note.Weighed weighed) {
      return TextEdit.append(text, "weighings", entry(weighed));
    }
    if (note instanceof Note.Confirmed confirmed) {
      return ConfirmedWeighing.in(text, confirmed.at());
    }
    if (note instanceof Note.Tared tared) {
      return TextEdit.append(text, "plates", entry(tared));
    }
    if (note instanceof Note.Ended ended) {
      return TextEdit.append(text, "plates", entry(ended));
    }
    if (note instanceof Note.WeighedOut out) {
      List<String> around = out.field().subList(0, out.field().size() - 1);
      List<String> volume = new ArrayList<>(around);
      volume.add("volume_ml");
      return TextEdit.set(
          TextEdit.remove(text, volume), out.field(), DecimalNode.valueOf(out.massG()));
    }
    if (note instanceof Note.Dropped dropped) {
      return dropped.line().removedFrom(text);
    }
    if (note instanceof Note.Corrected corrected) {
      return corrected.line().correctedIn(text, corrected.value());
    }
    if (note instanceof Note.PutAway put) {
      return put.away()
          ? TextEdit.set(text, List.of("put_away"), BooleanNode.TRUE)
          : TextEdit.remove(text, List.of("put_away"));
    }
    if (note instanceof Note.Pulled pulled) {
      return TextEdit.append(text, "pulls", entry(pulled));
    }
    if (note instanceof Note.WentWrong wrong) {
      return TextEdit.append(text, "faults", entry(wrong));
    }
    if (note instanceof Note.Moved moved) {
      ObjectNode entry = JSON.objectNode();
      entry.put("at", moved.at()).put("faces", FileWord.of(moved.open()));
      return TextEdit.append(text, "moved", entry);
    }
    throw new IllegalStateException("a note of no known kind: " + note);
  }

  /** A recipe that somebody pours is not invented any more. */
  private static String pouredAt(String text, String at) throws UnreadableFileException {
    boolean begins = TextEdit.remove(text, List.of("poured_at")).equals(text);
    return TextEdit.set(
        begins ? TextEdit.remove(text, List.of("invented")) : text,
        List.of("poured_at"),
        TextNode.valueOf(at));
  }

  private static String set(String text, Optional<BigDecimal> value, String... path)
      throws UnreadableFileException {
    return value.isPresent()
        ? TextEdit.set(text, List.of(path), DecimalNode.valueOf(value.get()))
        : text;
  }

  private static ObjectNode entry(Note.Weighed weighed) {
    ObjectNode entry = JSON.objectNode();
    entry.put("at", weighed.at()).set("mass_g", DecimalNode.valueOf(weighed.massG()));
    weighed.withPlate().ifPresent(with -> entry.put("with_plate", with));
    weighed.samePlate().ifPresent(same -> entry.put("same_plate", same));
    weighed.plate().ifPresent(plate -> entry.put("plate", plate));
    return entry;
  }

  private static ObjectNode entry(Note.Photographed photo) {
    ObjectNode entry = JSON.objectNode();
    entry.put("file", photo.name());
    photo.at().ifPresent(at -> entry.put("at", at));
    photo.caption().ifPresent(words -> entry.put("caption", words));
    photo.plate().ifPresent(plate -> entry.put("plate", plate));
    return entry;
  }

  private static ObjectNode entry(Note.Tared tared) {
    ObjectNode entry = JSON.objectNode();
    entry.put("plate", tared.plate()).set("tare_g", DecimalNode.valueOf(tared.tareG()));
    return entry;
  }

  private static ObjectNode entry(Note.Ended ended) {
    ObjectNode entry = JSON.objectNode();
    ended.plate().ifPresent(plate -> entry.put("plate", plate));
    entry.put("off_at", ended.at());
    ended.givenUp().ifPresent(why -> entry.put("given_up", why));
    return entry;
  }

  private static ObjectNode entry(Note.Pulled pulled) {
    ObjectNode entry = JSON.objectNode();
    entry.set(pulled.loadInKg() ? "load_kg" : "load_N", DecimalNode.valueOf(pulled.load()));
    entry.set("width_mm", DecimalNode.valueOf(pulled.widthMm()));
    pulled.thicknessUm().ifPresent(um -> entry.set("thickness_um", DecimalNode.valueOf(um)));
    pulled.stretchPct().ifPresent(pct -> entry.set("stretch_pct", DecimalNode.valueOf(pct)));
    return entry;
  }

  private static ObjectNode entry(Note.WentWrong wrong) {
    ObjectNode entry = JSON.objectNode();
    entry.put("kind", FileWord.of(wrong.kind()));
    entry.put("where", FileWord.of(wrong.where()));
    wrong.at().ifPresent(at -> entry.put("at", at));
    wrong.remark().ifPresent(remark -> entry.put("remark", remark));
    return entry;
  }
}
