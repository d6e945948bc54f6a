package starchfilm.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.saving.NewPhoto;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NoteWriter;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.NotedLine.Kind;
import starchfilm.files.saving.PlateDoubtException;
import starchfilm.files.saving.PotLine;
import starchfilm.files.saving.TrialFileText;
import starchfilm.files.saving.Undo;

/** Writes what was weighed, measured or seen into a trial file. */
@Command(
    name = "note",
    sortOptions = false,
    customSynopsis = "starchfilm note FILE [what to note]...",
    description = {
      "Note what was weighed, measured or seen in a trial file.",
      "",
      "Without options it asks questions. Everything else in the file stays"
          + " as it is, and its last version is kept beside it. Write times like:"
          + " now, +6h, 20 min ago, 18:30, yesterday 18:30, friday 7:15, 2.4.2026"
          + " 18:30, 2026-04-02 18:30; a comma in a number is a decimal comma."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFile:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm note garden/7.json --poured \"yesterday 10:30\" --poured-mass 150g --tare 598g",
      "  starchfilm note garden/7.json --weighed \"yesterday 18:30=725g\" --weighed 20h=680g",
      "  starchfilm note garden/7.json --starch 13.4g --water 361g",
      "  starchfilm note garden/7.json --weighed 655g",
      "  starchfilm note garden/7.json --of 2 --weighed 661g",
      "  starchfilm note garden/7.json --of 2 --given-up \"the cat\"",
      "  starchfilm note garden/7.json --fault \"still wet\" --where middle --rating 2",
      "  starchfilm note garden/7.json --undo",
      "  starchfilm note garden/7.json --replace \"weighing 2=690g\"",
      "",
      "Exit codes: 0 noted, 2 the note is not possible or the file cannot be"
          + " written; nothing was changed."
    })
final class NoteCommand implements Callable<Integer> {
  private static final String NOW = "now";

  private final CommandContext surroundings;

  @Parameters(arity = "1", paramLabel = "FILE", description = "The trial file.")
  private Path file = Path.of("");

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "Time of the weighing, fault or move. Left out: now, for weighings and" + " moves.")
  private @Nullable String at;

  @Option(
      names = "--weighed",
      paramLabel = "[TIME=]MASS",
      description = "What the scale showed, plate included: 712g, or 6h=734g. May be repeated.")
  private List<String> weighed = List.of();

  @Option(
      names = "--of",
      paramLabel = "NUMBER",
      description =
          "Which plate of the pour it is about. Left out: the first was weighed, all are done, and"
              + " thicknesses and strips are of any.")
  private @Nullable String plate;

  @Option(names = "--off", description = "The film is off the plate: done.")
  private boolean off;

  @Option(
      names = "--given-up",
      paramLabel = "WHY",
      description =
          "It was given up: \"the cat\", spilt, mould. Its weighings are still" + " learnt from.")
  private @Nullable String givenUp;

  @Option(
      names = "--confirm",
      paramLabel = "TIME",
      description = "The weighing at this time, such as 19h, is right although it looks" + " odd.")
  private List<String> confirmed = List.of();

  @Option(names = "--without-plate", description = "The film was weighed alone.")
  private boolean withoutPlate;

  @Option(
      names = "--same-plate",
      description =
          "It is the same plate as before, although its film is heavier; false"
              + " means another plate: the weighing is kept and left out of the"
              + " forecast.",
      arity = "0..1",
      fallbackValue = "true")
  private @Nullable Boolean samePlate;

  @Option(
      names = "--undo",
      description =
          "Undo the last change of the file; a second --undo restores it."
              + " Refused if the file was changed since.")
  private boolean undo;

  @Option(
      names = "--list",
      description = "List what is noted, line by line, without noting anything.")
  private boolean list;

  @Option(
      names = "--drop",
      paramLabel = "LINE",
      description = "Take out a line that was noted: \"weighing 2\", as --list names it.")
  private List<String> dropped = List.of();

  @Option(
      names = "--replace",
      paramLabel = "LINE=VALUE",
      description = "Correct the value of such a line: \"weighing 2=690g\".")
  private List<String> replaced = List.of();

  @Option(
      names = "--put-away",
      description =
          "Put the trial away: lists, comparisons and lessons of its folder go without it. Nothing"
              + " is deleted.")
  private boolean putAway;

  @Option(names = "--fetch-back", description = "Fetch a trial back that was put away.")
  private boolean fetchBack;

  @Option(
      names = "--thickness",
      paramLabel = "LENGTH",
      description = "Of the dry film, such as 112um, or \"112; 118; 131\" for several places.")
  private List<String> thicknesses = List.of();

  @ArgGroup(
      exclusive = false,
      multiplicity = "0..*",
      heading = "%nA strip pulled until it broke:%n")
  private List<StripOptions> strips = new ArrayList<>();

  @ArgGroup(exclusive = false, multiplicity = "0..*", heading = "%nSomething that went wrong:%n")
  private List<FaultOptions> faults = new ArrayList<>();

  @ArgGroup(exclusive = false, heading = "%nPour and cook:%n")
  private PotOptions pot = new PotOptions();

  @Option(
      names = "--moved",
      paramLabel = "FACES",
      description =
          "Open to the air from then on: upper, turned (peeled and turned) or both (rack).")
  private @Nullable String moved;

  @Option(
      names = "--rating",
      paramLabel = "1..5",
      description = "From 1, a failure, to 5, a film you want again.")
  private @Nullable String rating;

  @Option(names = "--remark", paramLabel = "TEXT", description = "In your words. May be repeated.")
  private List<String> remarks = List.of();

  @Option(
      names = "--photo",
      paramLabel = "FILE",
      description =
          "A JPEG, PNG or GIF in the trial's folder, dated by its camera unless --at is given. One"
              + " that tells where it was taken is noted as a copy that does not. May be repeated.")
  private List<Path> photos = List.of();

  @Option(names = "--keep-place", description = "Keep what says where those pictures were taken.")
  private boolean keepPlace;

  @Option(names = "--caption", paramLabel = "TEXT", description = "What those pictures show.")
  private @Nullable String caption;

  NoteCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Path trial = surroundings.resolve(file);
    MomentParser moments = new MomentParser(surroundings.clock());
    Notebook notebook = NotebookReader.read(List.of(trial));
    Optional<LocalDateTime> poured =
        pot.poured == null
            ? notebook.trials().stream().findFirst().flatMap(Trial::pouredAt)
            : Optional.of(read("--poured", () -> NoteWords.pour(moments, pot.pouredAt())));
    NoteWords words = new NoteWords(moments, poured);
    List<Note> notes = fromOptions(trial, words, poured);
    if (undo) {
      takeBack(trial, notes);
      return ExitCodes.DONE;
    }
    if (list) {
      lines(trial).forEach(line -> surroundings.out().println(line.name() + ": " + line.words()));
      return ExitCodes.DONE;
    }
    NoteQuestions questions = new NoteQuestions(surroundings, words, trial);
    boolean asks = notes.isEmpty();
    if (asks) {
      refuse(notebook.faults());
      notes = questions.ask();
    }
    if (notes.isEmpty()) {
      surroundings.out().println("Nothing noted.");
      return ExitCodes.DONE;
    }
    try {
      return keep(trial, notes, poured, questions, asks);
    } catch (CommandFailure slip) {
      if (!asks || notes.size() == 1) {
        throw slip;
      }
    }
    // One answer cannot be noted; the others were given all the same.
    int exitCode = ExitCodes.DONE;
    for (Note note : notes) {
      try {
        write(trial, List.of(note), questions, true);
      } catch (CommandFailure slip) {
        surroundings.err().println("starchfilm: " + slip.getMessage());
        exitCode = slip.exitCode();
      }
    }
    return exitCode;
  }

  /** Notes them; copies of pictures are kept only with their note. */
  private int keep(
      Path trial,
      List<Note> notes,
      Optional<LocalDateTime> poured,
      NoteQuestions questions,
      boolean asks) {
    try {
      NewPhoto.Named named = NewPhoto.named(trial, notes, poured, keepPlace);
      try {
        int exitCode = write(trial, named.notes(), questions, asks);
        named
            .copies()
            .forEach(
                copy ->
                    surroundings
                        .out()
                        .println(
                            besideTrial(trial, copy)
                                + " is a copy without the place it was taken at; the picture itself"
                                + " stays as it is."));
        return exitCode;
      } catch (CommandFailure refused) {
        named.discard();
        throw refused;
      }
    } catch (NotWrittenException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
  }

  private int write(Path trial, List<Note> notes, NoteQuestions questions, boolean asks) {
    Note.Several several = new Note.Several(notes);
    try {
      write(trial, samePlate == null ? several : several.onSamePlate(samePlate));
    } catch (PlateDoubtException e) {
      Optional<Boolean> same = asks ? questions.samePlate(e.told()) : Optional.empty();
      if (asks && same.isEmpty()) {
        surroundings.out().println("Nothing noted.");
        return ExitCodes.DONE;
      }
      try {
        write(trial, several.onSamePlate(same.orElseThrow(() -> unsaid(e))));
      } catch (PlateDoubtException impossible) {
        throw new IllegalStateException("a plate that looks wrong", impossible);
      }
    }
    return ExitCodes.DONE;
  }

  private static List<NotedLine> lines(Path trial) {
    try {
      return NotedLine.of(TrialFileText.of(trial).text());
    } catch (NotWrittenException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
  }

  private static List<PotLine> potLines(Path trial) {
    try {
      return PotLine.of(TrialFileText.of(trial).text());
    } catch (NotWrittenException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
  }

  private CommandFailure unsaid(PlateDoubtException e) {
    return CommandFailure.wrongInput(
        file
            + ": "
            + e.told()
            + "; nothing was noted. Was it the same plate? Then add --same-plate. Another plate:"
            + " --same-plate=false keeps the weighing and leaves it out of the forecast");
  }

  private void takeBack(Path trial, List<Note> notes) {
    if (!notes.isEmpty()) {
      throw CommandFailure.wrongInput("--undo: given with something to note; use it alone");
    }
    try {
      Undo.TakenBack back = Undo.last(trial, Optional.empty());
      surroundings.out().println("Undone in " + file + ":");
      back.lines().forEach(line -> surroundings.out().println("  " + line));
      back.kept()
          .ifPresent(
              before ->
                  surroundings
                      .out()
                      .println(
                          "The version with it is kept in "
                              + besideTrial(trial, before)
                              + "; a second --undo restores it."));
    } catch (NotWrittenException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
  }

  private void write(Path trial, Note.Several noted) throws PlateDoubtException {
    List<Note> notes = noted.notes();
    try {
      NoteWriter.Written written = NoteWriter.add(trial, noted);
      surroundings.out().println("Noted in " + file + ":");
      notes.forEach(note -> surroundings.out().println("  " + note.words()));
      written
          .before()
          .ifPresent(
              before ->
                  surroundings
                      .out()
                      .println(
                          "The version before is kept in " + besideTrial(trial, before) + "."));
      written.notices().forEach(notice -> surroundings.err().println(notice.sentence()));
      if (written.trial().isEmpty()) {
        surroundings
            .err()
            .println(file + ": noted, but the file has other faults; see starchfilm check " + file);
      }
    } catch (PlateDoubtException e) {
      throw e;
    } catch (NotWrittenException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
  }

  /** Beside the file as typed, or, where that is a link, beside what it leads to. */
  private Path besideTrial(Path trial, Path before) {
    Path beside = file.resolveSibling(String.valueOf(before.getFileName()));
    return Files.isSymbolicLink(trial) ? before : beside;
  }

  /** A file at fault is mended before anybody answers questions about it. */
  private static void refuse(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw CommandFailure.wrongInput(
          faults.stream().map(Fault::sentence).collect(Collectors.joining("\n")));
    }
  }

  private List<Note> fromOptions(Path trial, NoteWords words, Optional<LocalDateTime> poured) {
    List<Note> notes = new ArrayList<>();
    String of = given(plate);
    OptionalInt number = read("--of", () -> words.plate(of));
    notes.addAll(pot.weighedOut(() -> potLines(trial)));
    notes.addAll(pot.pour(words, poured, of));
    notes.addAll(pot.cook(words));
    String time = Optional.ofNullable(at).orElse(NOW);
    weighed.forEach(
        typed -> notes.add(read("--weighed", () -> words.weighed(typed, time, of, withoutPlate))));
    if (off || givenUp != null) {
      Map<String, String> end = Map.of("plate", of, "off_at", time, "given_up", given(givenUp));
      notes.add(read(givenUp == null ? "--off" : "--given-up", () -> words.line(Kind.PLATE, end)));
    }
    confirmed.forEach(typed -> notes.add(read("--confirm", () -> words.confirmed(typed))));
    thicknesses.forEach(
        typed -> notes.addAll(read("--thickness", () -> words.thicknesses(typed, of)).notes()));
    if (!(dropped.isEmpty() && replaced.isEmpty())) {
      List<NotedLine> lines = lines(trial);
      replaced.forEach(
          typed -> notes.add(read("--replace", () -> NoteWords.corrected(lines, typed))));
      // From the last line on, so that those before keep their places.
      dropped.stream()
          .map(typed -> read("--drop", () -> NotedLine.named(lines, typed)))
          .sorted(Comparator.comparingInt(NotedLine::number).reversed())
          .forEach(line -> notes.add(new Note.Dropped(line)));
    }
    if (putAway || fetchBack) {
      notes.add(new Note.PutAway(putAway));
    }
    strips.forEach(strip -> notes.add(read("--pull", () -> strip.note(words, of))));
    faults.forEach(fault -> notes.add(read("--fault", () -> fault.note(words, given(at)))));
    if (moved != null) {
      Map<String, String> move = Map.of("at", time, "faces", moved);
      notes.add(read("--moved", () -> words.line(Kind.MOVE, move)));
    }
    if (rating != null) {
      Map<String, String> rated = Map.of("rating", rating);
      notes.add(read("--rating", () -> words.put(rated)));
    }
    remarks.forEach(remark -> notes.add(words.one(Kind.REMARK, remark)));
    photos.forEach(
        photo ->
            notes.add(
                new Note.Photographed(
                    NoteWords.photo(trial, surroundings.resolve(photo)).name(),
                    Optional.ofNullable(at).map(typed -> read("--at", () -> words.when(typed))),
                    Optional.ofNullable(caption),
                    number)));
    return notes;
  }

  /** What was typed; empty where nothing was. */
  static String given(@Nullable String typed) {
    return typed == null ? "" : typed;
  }

  /** Reads typed words and names the option they were given to where they cannot be read. */
  static <T> T read(String option, Supplier<T> words) {
    try {
      return words.get();
    } catch (MistypedException e) {
      throw CommandFailure.wrongInput(option + ": " + e.getMessage());
    }
  }

  /** A pulled strip. */
  static final class StripOptions {
    @Option(
        names = "--pull",
        required = true,
        paramLabel = "LOAD",
        description = "Load at break: 9.4N, or the mass that hung on it, 0.96kg.")
    private String load = "";

    @Option(
        names = "--width",
        required = true,
        paramLabel = "LENGTH",
        description = "Width of the strip, such as 10mm.")
    private String width = "";

    @Option(
        names = "--strip-thickness",
        paramLabel = "LENGTH",
        description = "Thickness of the strip. Left out: the mean of the film's.")
    private @Nullable String thickness;

    @Option(
        names = "--stretch",
        paramLabel = "SHARE",
        description = "Stretch at break between the clips, such as 24%%.")
    private @Nullable String stretch;

    Note note(NoteWords words, String plate) {
      return words.pulled(load, width, given(thickness), given(stretch), plate);
    }
  }

  /** A fault. */
  static final class FaultOptions {
    @Option(
        names = "--fault",
        required = true,
        paramLabel = "KIND",
        description =
            "cracked, broke apart, curled, shrank, sticky, brittle, cloudy, still wet, bubbles,"
                + " lumps, scorched, mould, stuck or uneven.")
    private String kind = "";

    @Option(
        names = "--where",
        paramLabel = "PLACE",
        description = "edge, middle or all (the default).")
    private @Nullable String where;

    @Option(names = "--fault-remark", paramLabel = "TEXT", description = "In your words.")
    private @Nullable String remark;

    Note note(NoteWords words, String at) {
      String place = where == null ? "all" : where;
      return words.line(
          Kind.FAULT, Map.of("kind", kind, "where", place, "at", at, "remark", given(remark)));
    }
  }
}
