package starchfilm.web;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Notice;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.NoteWriter;
import starchfilm.web.http.Fields;

/** Writes what a form notes into a trial file. */
final class NoteDesk {
  private final PageContext desk;

  NoteDesk(PageContext desk) {
    this.desk = desk;
  }

  /**
   * What came of a form.
   *
   * @param done true where it was written
   * @param sentences what to tell the reader: remarks where it was written, else why not
   */
  record Outcome(boolean done, List<String> sentences) {}

  /**
   * Notes what a form holds.
   *
   * @param file the trial file
   * @param form the form
   * @return whether it was written
   */
  Outcome write(Path file, Fields form) {
    Optional<LocalDateTime> pouredAt =
        desk.folder().read(List.of(file)).trials().stream().findFirst().flatMap(Trial::pouredAt);
    try {
      NoteWriter.Written written =
          NoteWriter.add(file, new NoteForm(form, new MomentParser(desk.clock()), pouredAt).note());
      List<String> sentences = new ArrayList<>(List.of("Noted."));
      written.notices().stream().map(Notice::text).forEach(sentences::add);
      return new Outcome(true, sentences);
    } catch (NoteForm.NamedMistake e) {
      return new Outcome(false, List.of(String.valueOf(e.getMessage())));
    } catch (NotWrittenException e) {
      return new Outcome(false, sentences(e));
    }
  }

  /** Why something was not written, without the name of the file the reader is looking at. */
  static List<String> sentences(NotWrittenException e) {
    return e.faults().stream().map(fault -> inTheFormsWords(sentence(fault))).toList();
  }

  /** Who weighs a plate on a page has never seen the file. */
  private static String inTheFormsWords(String sentence) {
    return sentence
        .replaceAll("weighings\\[\\d+]\\.mass_g", "The weight")
        .replaceAll("weighings\\[\\d+]\\.at", "The time")
        .replace("the plate's tare_g", "the weight of the empty plate (Edit the trial)")
        .replace("whether with_plate is right", "whether the film lay on its plate");
  }

  static String sentence(Fault fault) {
    return (fault.field().isEmpty() ? "" : fault.field() + ": ") + atItsField(fault);
  }

  /** A fault told where its field stands, which needs no name there. */
  static String atItsField(Fault fault) {
    StringBuilder text = new StringBuilder(fault.given());
    if (!fault.allowed().isEmpty()) {
      text.append(" given, allowed ").append(fault.allowed());
    }
    return text.append("; ").append(fault.mend()).append('.').toString();
  }
}
