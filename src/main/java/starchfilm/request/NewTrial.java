package starchfilm.request;

import static starchfilm.numerics.units.Units.DAY_S;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.FreshTrial;

/**
 * A trial to be kept: what somebody cooked, in one line or field by field, or an earlier trial
 * poured again, perhaps with one thing changed.
 *
 * @param name what it is called
 * @param text the text of its file
 * @param trial what the file says
 * @param changed the one thing that is different from the earlier trial, in words; empty where
 *     nothing was named
 * @param assumptions what was taken for granted, a sentence each
 */
public record NewTrial(
    String name, String text, Trial trial, String changed, List<String> assumptions) {

  /** What a trial that is poured again has in common with the earlier one. */
  private static final List<String> SECTIONS = List.of("recipe", "cook", "pour", "room", "use");

  /**
   * Lists the changes that a word may name.
   *
   * @return such as {@code thinner}
   */
  public static List<String> changes() {
    return OneChange.words();
  }

  /**
   * Reads what was written.
   *
   * @param written what was cooked, in one line, and what was written field by field
   * @param base the earlier trial, where one is named
   * @param folder where the file will stand
   * @param clock the clock on the wall
   * @return the trial
   * @throws RefusedRequestException where it cannot be meant
   */
  public static NewTrial read(
      Entries written, Optional<TrialQuestion.Base> base, Path folder, Clock clock) {
    EntryReader in = withLine(written, clock);
    Optional<LocalDateTime> poured = TrialQuestion.poured(in, clock);
    OptionalDouble byS = TrialQuestion.wantedByS(in, poured, clock);
    Optional<OneChange> change =
        in.one("but.but", words -> OneChange.of(words, base.map(TrialQuestion.Base::trial)));
    String name =
        in.one("new.name", String::strip)
            .filter(given -> !given.isEmpty())
            .orElseGet(() -> base.map(from -> name(from, change)).orElse("As cooked"));
    ObjectValue start =
        base.map(earlier -> again(earlier, change, folder)).orElse(TrialQuestion.NOTHING);
    Optional<TrialQuestion.Base> read =
        new WrittenTrial(
                in,
                own(start.with("name", name), poured, byS),
                base.map(TrialQuestion.Base::trial),
                folder,
                clock)
            .read();
    base.ifPresent(earlier -> tellKept(in, earlier, start));
    read.ifPresent(whole -> requireBeside(in, whole.trial(), folder));
    read.ifPresent(whole -> requireAlone(in, change, whole.trial()));
    return in.finished(
        () ->
            new NewTrial(
                name,
                sound(LocatedWriter.lines(inOrder(read.orElseThrow().fields())), folder),
                read.get().trial(),
                change.map(OneChange::sentence).orElse(""),
                assumptions(in, read.get().trial())));
  }

  /** Reads a line that says what was cooked beside what was written field by field. */
  static EntryReader withLine(Entries written, Clock clock) {
    String typed = String.join(" ", written.words(Field.of("line.cooked")));
    CookedText cooked = CookedText.of(typed, written, clock);
    EntryReader in = new EntryReader(cooked);
    if (!cooked.refusal().isEmpty()) {
      in.refuseAs("line.cooked", cooked.refusal());
    }
    return in;
  }

  private static List<String> assumptions(EntryReader in, Trial trial) {
    trial.notRecorded().forEach(gap -> in.assume(gap.words()));
    return in.assumptions();
  }

  private static void tellKept(EntryReader in, TrialQuestion.Base earlier, ObjectValue start) {
    List<String> kept = start.members().keySet().stream().filter(SECTIONS::contains).toList();
    in.remark(
        "What is neither changed nor written here is as in the trial %s: %s."
            .formatted(earlier.trial().name(), String.join(", ", kept)));
    if (!in.hasAny("place.room", "place.air", "place.humidity")) {
      earlier
          .log()
          .ifPresent(
              log ->
                  in.remark(
                      ("Its log %s is of the days of that pour and is left out: keep a new one, or"
                              + " note the air.")
                          .formatted(log)));
    }
  }

  private static String name(TrialQuestion.Base earlier, Optional<OneChange> change) {
    return earlier.trial().name() + ", " + change.map(OneChange::word).orElse("again");
  }

  /** The earlier trial without its history, one thing changed. */
  private static ObjectValue again(
      TrialQuestion.Base earlier, Optional<OneChange> change, Path folder) {
    ObjectValue fields = FreshTrial.of(earlier.fields());
    Path there = earlier.trial().file().toAbsolutePath().normalize();
    Path here = folder.toAbsolutePath().normalize();
    if (there.startsWith(here) && Files.exists(there)) {
      String name = PlainLine.of(here.relativize(there));
      fields = fields.with("from", name);
    }
    return change.isPresent() ? change.get().on(fields) : fields;
  }

  private static ObjectValue own(
      ObjectValue start, Optional<LocalDateTime> poured, OptionalDouble byS) {
    ObjectValue own = poured.isPresent() ? start.with("poured_at", poured.get().toString()) : start;
    // A day that was not understood is refused once everything is read.
    return byS.isPresent() && !Double.isNaN(byS.getAsDouble())
        ? own.with(
            "wish.ready_after_days",
            WrittenTrial.number(
                "when.by",
                BigDecimal.valueOf(byS.getAsDouble() / DAY_S).setScale(2, RoundingMode.HALF_UP)))
        : own;
  }

  /** What a change sets is set by nothing else. */
  private static void requireAlone(EntryReader in, Optional<OneChange> change, Trial trial) {
    if (change.isPresent()
        && TrialQuestion.isWritten(in)
        && !change.get().isMadeIn(trial.casting())) {
      in.refuse(
          "but.but",
          '"' + change.get().word() + "\" given beside another change of the same; leave one out");
    }
  }

  /** A trial file names its log by the name it has beside it. */
  private static void requireBeside(EntryReader in, Trial trial, Path folder) {
    if (in.has(WrittenPlace.ROOM) && trial.casting().room().isLogged()) {
      String log = in.one(WrittenPlace.ROOM, String::strip, "");
      if (!Files.isRegularFile(folder.resolve(Path.of(log).getFileName()))) {
        in.refuse(
            WrittenPlace.ROOM,
            log
                + " given, allowed a log in the folder of the trial; copy it there"
                + " first, so that both stay together");
      }
    }
  }

  /** A file allows less here and there than a question does: a name of any length. */
  private static String sound(String text, Path folder) {
    Findings findings = new Findings("");
    new TrialReader().read(text, folder.resolve("new.json"), findings);
    if (!findings.faults().isEmpty()) {
      throw RefusedRequestException.of(
          findings.faults().stream().map(fault -> fault.field() + ": " + fault.clause()).toList());
    }
    return text;
  }

  /** In the order of the table of fields, whatever was written first. */
  private static ObjectValue inOrder(ObjectValue trial) {
    Map<String, Member> ordered = new LinkedHashMap<>();
    for (String field : TrialField.TRIAL.fields().keySet()) {
      Optional.ofNullable(trial.members().get(field)).ifPresent(one -> ordered.put(field, one));
    }
    trial.members().forEach(ordered::putIfAbsent);
    return new ObjectValue(trial.place(), ordered, List.of());
  }
}
