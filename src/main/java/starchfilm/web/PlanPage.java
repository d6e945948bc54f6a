package starchfilm.web;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.files.findings.Allowed;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.diffusion.IntegrationFailure;
import starchfilm.numerics.units.Named;
import starchfilm.planning.PotShare;
import starchfilm.report.DryingFigure;
import starchfilm.report.Headline;
import starchfilm.report.TrialView;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.plan.SharedPotfuls;
import starchfilm.report.words.RoomWords;
import starchfilm.request.Handle;
import starchfilm.request.Handle.Travel;
import starchfilm.request.Sketch;
import starchfilm.request.TrialQuestion;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>The plan</em>: take a recipe, move its handles, see film and drying change. */
record PlanPage(PageContext desk) {
  private static final String STARTER_MARK = "starter ";
  private static final String BASE = "base";
  private static final String ROOM = "room";
  private static final String ORIGIN = "origin";
  private static final NumberField PLATES =
      new NumberField("plates", "Plates", Allowed.between(1, 50, "", "write a whole number"));
  private static final NumberField POT =
      new NumberField(
          "pot",
          "The pot holds",
          Allowed.between(0.2, 50, "l", "write how much it holds when brim-full"));
  private static final NumberField DEADLINE =
      new NumberField(
          "by", "Needed after", Allowed.between(0.1, 60, "days", "leave it out for any time"));

  private static final double USUAL_POT_L = 2;
  private static final double M3_PER_LITRE = 1e-3;

  /** What the handles and fields say. */
  private record Moved(
      Sketch sketch, String room, int plates, double potL, String origin, OptionalDouble byDays) {}

  /**
   * A moved recipe in potfuls.
   *
   * @param shares how its plates are shared out over potfuls
   * @param made for each share a trial
   */
  private record Cooked(List<PotShare> shares, List<TrialQuestion.Base> made) {
    List<Trial> trials() {
      return made.stream().map(TrialQuestion.Base::trial).toList();
    }
  }

  void addTo(Routes table) {
    table
        .read("/plan", this::plan)
        .read("/plan/sketch", this::sketch)
        .send("/plan/keep", this::keep);
  }

  private Response plan(Request request) throws NotWrittenException {
    return page(200, request.query(), List.of());
  }

  private Response page(int status, Fields fields, List<String> why) throws NotWrittenException {
    TrialQuestion.Base written = written(fields);
    TrialQuestion.Base base = written.again();
    Map<String, Object> values = values(base, fields);
    values.put("log", written.log().orElse(""));
    values.put("starts", starts());
    Set<String> rooms = new TreeSet<>(rooms().keySet());
    rooms.add(base.trial().casting().place().name());
    values.put("rooms", List.copyOf(rooms));
    values.put("why", why);
    values.put("name", fields.text("name"));
    return desk.page(status, "plan", "plan", values);
  }

  private Response sketch(Request request) throws NotWrittenException {
    if (!request.partial()) {
      return plan(request);
    }
    return desk.part("plan", "redrawn", values(base(request.query()), request.query()));
  }

  private Map<String, Object> values(TrialQuestion.Base base, Fields fields) {
    Moved moved = moved(base, fields);
    Map<String, Object> values = new HashMap<>();
    values.put(BASE, key(fields));
    values.put("baseName", base.trial().name());
    values.put(ROOM, moved.room());
    values.put(PLATES.key(), moved.plates());
    values.put(POT.key(), moved.potL());
    values.put(DEADLINE.key(), fields.text(DEADLINE.key()));
    values.put("handles", HandleView.of(base.trial().casting(), moved.sketch()));
    values.put("airSwings", !Handle.AIR.isFree(base.trial().casting()));
    values.put("canMovePlasticiser", Handle.PLASTICISER.isFree(base.trial().casting()));
    values.put("origins", Named.all(GlycerolOrigin.values()));
    values.put(ORIGIN, moved.origin());
    try {
      Cooked cooked = cooked(base, moved, base.trial().name());
      TrialAnalysis analysis = desk.bench().sketch(cooked.trials().get(0));
      OptionalDouble byS = moved.byDays().stream().map(days -> days * DAY_S).findFirst();
      values.put("trial", TrialView.of(analysis));
      DryingPlace place = analysis.forecast().trial().casting().place();
      values.put("place", RoomWords.place(place));
      values.put("learnt", LearntSheet.told(desk.workshops().in(desk.folder().root()), place));
      values.put("figure", DryingFigure.moved(analysis.forecast(), unmoved(base), byS));
      values.put(
          "inTime", byS.isPresent() ? Headline.inTime(analysis.forecast(), byS.getAsDouble()) : "");
      values.put("pouredPlates", moved.plates());
      values.put(
          "pots", SharedPotfuls.of(moved.potL() * M3_PER_LITRE, cooked.shares(), cooked.trials()));
      values.put("kept", cooked.shares().get(0).plates());
      values.put("failure", "");
    } catch (NotWrittenException e) {
      values.put("failure", String.join(" ", NoteDesk.sentences(e)));
    } catch (IllegalArgumentException | IntegrationFailure e) {
      values.put("failure", String.valueOf(e.getMessage()));
    }
    return values;
  }

  /** The forecast of the trial as it is, but without what its plates were seen to do. */
  private TrialForecast unmoved(TrialQuestion.Base base) throws NotWrittenException {
    Trial trial = base.trial();
    int plates = trial.casting().pour().plates();
    return desk.bench()
        .sketch(Sketch.of(trial).applied(base, trial.name(), plates, 0).trial())
        .forecast();
  }

  /** The handles of a form; those of another recipe, or room, say nothing about this one. */
  private Moved moved(TrialQuestion.Base base, Fields fields) {
    Casting casting = base.trial().casting();
    boolean moved = fields.text("was").equals(key(fields));
    Sketch sketch = Sketch.of(base.trial());
    for (Handle handle : sketch.figures().keySet()) {
      Travel ends = handle.ends(casting);
      Allowed allowed =
          Allowed.between(ends.least(), ends.most(), handle.unit(), "move the slider there");
      NumberField field = new NumberField(handle.key(), handle.label(), allowed);
      OptionalDouble to = moved ? field.in(fields) : OptionalDouble.empty();
      if (to.isPresent()) {
        sketch = sketch.with(handle, to.getAsDouble());
      }
    }
    String own = casting.place().name();
    String room = fields.has(ROOM) && moved ? fields.text(ROOM) : own;
    // The folder is read only where another room is chosen: a slider asks many times a second.
    Casting there = room.equals(own) ? casting : rooms().get(room);
    if (there != null && moved && !room.equals(fields.text("roomWas")) && fields.has("roomWas")) {
      for (Handle handle : List.of(Handle.AIR, Handle.RH, Handle.FAN)) {
        if (handle.isFree(casting)) {
          sketch = sketch.with(handle, handle.of(there));
        }
      }
    }
    return new Moved(
        sketch,
        there == null ? own : room,
        moved ? plates(fields, casting) : casting.pour().plates(),
        POT.in(fields).orElse(USUAL_POT_L),
        moved && fields.has(ORIGIN)
            ? fields.text(ORIGIN)
            : Named.of(base.trial().recipe().glycerol().stock().origin()),
        fields.text(DEADLINE.key()).isEmpty() ? OptionalDouble.empty() : DEADLINE.in(fields));
  }

  private static int plates(Fields fields, Casting casting) {
    double plates = PLATES.in(fields).orElse(casting.pour().plates());
    if (plates % 1 != 0) {
      throw PLATES.refused(fields);
    }
    return (int) plates;
  }

  /** The rooms of the folder whose air stays the same, each as in the last trial there. */
  private Map<String, Casting> rooms() {
    Map<String, Casting> rooms = new TreeMap<>();
    for (Trial trial : desk.folder().read().trials()) {
      if (Handle.AIR.isFree(trial.casting())
          && !trial.casting().place().name().equals(DryingPlace.UNNAMED)) {
        rooms.put(trial.casting().place().name(), trial.casting());
      }
    }
    return rooms;
  }

  private Cooked cooked(TrialQuestion.Base base, Moved moved, String name)
      throws NotWrittenException {
    double inPotKg = moved(base, moved, name, moved.plates()).trial().recipe().massKg();
    List<PotShare> shares =
        PotShare.of(inPotKg / moved.plates(), moved.potL() * M3_PER_LITRE, moved.plates());
    List<TrialQuestion.Base> made = new ArrayList<>();
    for (PotShare share : shares) {
      made.add(moved(base, moved, name, share.plates()));
    }
    return new Cooked(shares, made);
  }

  private static TrialQuestion.Base moved(
      TrialQuestion.Base base, Moved moved, String name, int plates) throws NotWrittenException {
    TrialQuestion.Base made = moved.sketch().applied(base, name, plates, PotShare.LEFT_IN_POT);
    if (!moved.room().equals(base.trial().casting().place().name())) {
      made = made.with("room.name", moved.room());
    }
    return Handle.PLASTICISER.isFree(base.trial().casting())
        ? made.with("recipe.glycerol.origin", moved.origin())
        : made;
  }

  private Response keep(Request request) throws NotWrittenException {
    Fields posted = request.posted();
    TrialQuestion.Base base = base(posted);
    String name = posted.text("name");
    if (name.isEmpty()) {
      return page(422, posted, List.of("The new trial needs a name."));
    }
    try {
      return desk.begun(name, cooked(base, moved(base, posted), name).made().get(0).text(), "");
    } catch (NotWrittenException e) {
      return page(422, posted, NoteDesk.sentences(e));
    }
  }

  /** What can be started from: its value in the form, and its name. */
  private Map<String, String> starts() {
    Map<String, String> starts = new LinkedHashMap<>();
    TextPage.starters().forEach((key, name) -> starts.put(STARTER_MARK + key, name));
    starts.putAll(desk.names(desk.folder().read().trials()));
    return starts;
  }

  private static String key(Fields fields) {
    String chosen = fields.text(BASE);
    return chosen.isEmpty() ? STARTER_MARK + "first-film" : chosen;
  }

  private TrialQuestion.Base base(Fields fields) throws NotWrittenException {
    return written(fields).again();
  }

  /** The trial to start from, as it is written. */
  private TrialQuestion.Base written(Fields fields) throws NotWrittenException {
    String chosen = key(fields);
    return desk.folder()
        .sketched(
            chosen.startsWith(STARTER_MARK)
                ? TextPage.starterText(chosen.substring(STARTER_MARK.length()))
                : TrialFileText.of(desk.folder().trialFile(chosen)).text());
  }
}
