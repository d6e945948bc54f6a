package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWriter;
import starchfilm.files.saving.PlateDoubtException;
import starchfilm.files.saving.PotEntry;
import starchfilm.files.saving.TrialFileText;
import starchfilm.files.saving.Undo;
import starchfilm.request.NoteRequest;
import starchfilm.request.RefusedRequestException;
import starchfilm.web.FlashMessages.UndoOffer;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Response;

/** Writes what a form notes into a trial file. */
record NoteDesk(PageContext desk) {

  /**
   * Why a form was not noted.
   *
   * @param why why, in sentences
   * @param input the first input they are about; empty where they are about none
   * @param isDoubt true where it is only asked whether it was the same plate
   */
  record Refused(List<String> why, String input, boolean isDoubt) {
    static final Refused NOTHING = new Refused(List.of(), "", false);

    static Refused because(List<String> why) {
      return new Refused(why, "", false);
    }

    /** Of a file that takes no such note, which the main input of its form would change. */
    static Refused of(Fields form, List<String> why, boolean isDoubt) {
      return new Refused(
          why,
          NoteRequest.main(form.text("kind")).map(field -> field.parts().get(0).key()).orElse(""),
          isDoubt);
    }
  }

  /**
   * Notes what a form holds.
   *
   * @param file the trial file
   * @param form the form
   * @param address the page that says what was noted
   * @param again the page with the form once more, where it was not
   */
  Response write(Path file, Fields form, String address, Function<Refused, Response> again) {
    try {
      List<Note> notes =
          form.text("kind").equals("weighed-out")
              ? weighedOut(form, lines(file, PotEntry::of))
              : NoteRequest.read(
                      new FormEntries(form),
                      new NoteRequest.Subject(
                          file, desk.folder().root(), desk.clock(), desk.folder().trial(file)))
                  .notes();
      if (notes.isEmpty()) {
        return again.apply(Refused.of(form, List.of(missing(form.text("kind"))), false));
      }
      Note.Several several = new Note.Several(notes);
      return backTo(address, file, several.words(), NoteWriter.add(file, several).version());
    } catch (RefusedRequestException e) {
      return again.apply(
          new Refused(
              e.sentences().stream().map(one -> one + ".").toList(),
              FormEntries.atInputs(e.mistakes(), form).keySet().iterator().next(),
              false));
    } catch (PlateDoubtException e) {
      String told = e.told();
      return again.apply(
          Refused.of(form, List.of("This would be " + told + ", so it is not noted yet."), true));
    } catch (NotWrittenException e) {
      return again.apply(Refused.of(form, sentences(e), false));
    }
  }

  /** What is asked for where nothing was filled in. */
  private static String missing(String kind) {
    return NoteRequest.main(kind)
        .map(field -> field.label() + ": not given; fill in this field.")
        .orElseThrow(() -> HttpError.malformed("This form notes nothing this page knows."));
  }

  /** A note for every line of the pot whose weight differs from the file's. */
  private static List<Note> weighedOut(Fields form, List<PotEntry> pot) {
    List<Note> notes = new ArrayList<>();
    List<String> mistakes = new ArrayList<>();
    for (int i = 0; i < pot.size(); i++) {
      PotEntry line = pot.get(i);
      String typed = form.text("pot-" + i);
      if (!typed.isEmpty() && !typed.equals(line.massG())) {
        try {
          notes.add(line.weighedOut(TypedAmount.number("g", typed)));
        } catch (MistypedException e) {
          mistakes.add(line.what() + ": " + e.getMessage());
        }
      }
    }
    if (notes.isEmpty() && mistakes.isEmpty()) {
      mistakes.add(
          "weighed out: nothing differs from the recipe; write what was weighed where it does");
    }
    if (!mistakes.isEmpty()) {
      throw RefusedRequestException.of(mistakes);
    }
    return notes;
  }

  /** Reads the text of a file. */
  interface TextReading<T> {
    /** What stands in it. */
    List<T> of(String text) throws NotWrittenException;
  }

  /** What stands in a file; nothing where it cannot be read. */
  static <T> List<T> lines(Path file, TextReading<T> reading) {
    try {
      return reading.of(TrialFileText.of(file).text());
    } catch (NotWrittenException e) {
      return List.of();
    }
  }

  /**
   * Sends the browser on to a page that says what was noted and offers to take it back.
   *
   * @param address the page
   * @param file the trial file
   * @param what what was noted
   * @param version the version the file has now
   */
  Response backTo(String address, Path file, String what, String version) {
    return said("Noted: ", new UndoOffer(desk.folder().name(file), version, what, address, "Undo"));
  }

  private Response said(String done, UndoOffer undo) {
    List<String> sentence = List.of(done + undo.what() + ".");
    return Response.seeOther(desk.said().on(undo.page(), sentence, Optional.of(undo)));
  }

  /**
   * Takes back what was noted, or what was taken back.
   *
   * @param form a form that tells the number of what was said about it
   * @return the page it was noted on; it says whether it was taken back
   */
  Response takeBack(Fields form) {
    UndoOffer undo =
        desk.said()
            .in(form)
            .undo()
            .orElseThrow(
                () ->
                    new HttpError(
                        422,
                        "It is too late to undo this note; nothing was changed. You can still"
                            + " edit it on the trial's own page."));
    try {
      Path file = desk.folder().trialFile(undo.file());
      String version = Undo.last(file, Optional.of(undo.version())).version();
      return undo.button().equals("Undo")
          ? said("Undone: ", undo.then(version, "Redo"))
          : said("Noted again: ", undo.then(version, "Undo"));
    } catch (NotWrittenException e) {
      return Response.seeOther(desk.said().on(undo.page(), sentences(e)));
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
        .replaceAll("(weighings|moved)\\[\\d+]\\.at", "The time")
        .replace("the plate's tare_g", "the weight of the empty plate (Edit the trial)")
        .replace("whether with_plate is right", "whether the film lay on its plate");
  }

  static String sentence(Fault fault) {
    return (fault.field().isEmpty() ? "" : fault.field() + ": ") + atItsField(fault);
  }

  /** A fault stated where its field stands, which needs no name there. */
  static String atItsField(Fault fault) {
    return fault.clause() + ".";
  }
}
