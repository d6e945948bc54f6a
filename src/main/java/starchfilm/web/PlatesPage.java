package starchfilm.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.PlateNow;
import starchfilm.today.Today;
import starchfilm.web.FlashMessages.FlashMessage;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/**
 * <em>The plates</em>: what is drying now, in the order of the trials, so that noting moves
 * nothing; a number and the Enter key a plate.
 */
record PlatesPage(PageContext desk) {
  private static final String PAGE = "/plates";
  private static final String FILE = "file";
  private static final String PLATE = "plate";

  /** Up to this many plates of one pour have a field each; with more, the number is typed. */
  private static final int MOST_FIELDS = 12;

  /**
   * Plates of one pour that nobody distinguished.
   *
   * @param row the trial
   * @param place its place on the page
   * @param alike the plates
   * @param plates which of the pour; empty where there is but one
   * @param state done, pending or none
   * @param now how it stands; null unless done
   * @param failure why there is no forecast; may be empty
   * @param said what was just noted of it, where no field comes after its own
   * @param entries a field a plate
   */
  record Card(
      TrialRow row,
      String place,
      Today.Alike alike,
      String plates,
      String state,
      @Nullable PlateNow now,
      String failure,
      FlashMessage said,
      List<WeightField> entries) {}

  /**
   * The field for one plate's weight.
   *
   * @param plate its number
   * @param label what the field is called
   * @param id its name on the page
   * @param typed the weight typed where it could not be noted; may be empty
   * @param refused why it could not be noted
   * @param focus true for the field after the one noted last
   * @param asksNumber true where the number of the plate is typed, too
   * @param said what was just noted of the plate before, so that it is in sight with this field
   * @param saidOf the trial of that plate; empty where it is the same
   */
  record WeightField(
      int plate,
      String label,
      String id,
      String typed,
      NoteDesk.Refused refused,
      boolean focus,
      boolean asksNumber,
      FlashMessage said,
      String saidOf) {}

  /** One plate of a trial, by its number. */
  private record PlateAddress(String file, int number) {}

  /** What was typed for one plate and could not be noted. */
  private record Retry(PlateAddress plate, String typed, NoteDesk.Refused refused) {}

  /**
   * What the reader did last.
   *
   * @param said what is said of it
   * @param noted the plate something was noted of
   * @param name the name of its trial; empty where it dries no more
   * @param next the plate whose field comes after that one's, if there is one
   */
  private record Last(
      FlashMessage said,
      PlateAddress noted,
      String name,
      Optional<PlateAddress> next,
      Optional<Retry> retry) {
    boolean isOf(String file, Today.Alike plates) {
      return said.isAbout(file)
          && noted.file().equals(file)
          && plates.numbers().contains(noted.number());
    }
  }

  void addTo(Routes table) {
    table
        .read(PAGE, request -> shown(request, Optional.empty(), PageContext.AT_ONCE_MS))
        .read("/plates/all", request -> shown(request, Optional.empty(), PageContext.PATIENCE_MS))
        .read("/plates/due", this::due)
        .send("/plates/weigh", this::weigh);
  }

  /** The anchor of a plate on the page. */
  static String place(String file, int plate) {
    return TrialRow.place(file) + (plate == 1 ? "" : "-" + plate);
  }

  private Response shown(Request request, Optional<Retry> retry, long patienceMs) {
    Notebook notebook = desk.folder().read();
    List<Today.Alike> drying = Today.alike(notebook.trials(), desk.now());
    List<Trial> planned =
        notebook.trials().stream()
            .filter(trial -> Stage.of(trial, desk.now()) == Stage.PLANNED)
            .toList();
    Map<Trial, TrialForecasts> made =
        desk.bench().glances(drying.stream().map(Today.Alike::as).toList(), patienceMs);
    Fields query = request.query();
    PlateAddress noted = new PlateAddress(query.text(FILE), query.number(PLATE).orElse(0));
    List<PlateAddress> fields =
        drying.stream()
            .flatMap(
                alike -> fields(alike).stream().map(plate -> new PlateAddress(file(alike), plate)))
            .toList();
    Optional<PlateAddress> next = fields.stream().skip(1L + fields.indexOf(noted)).findFirst();
    String name =
        drying.stream()
            .filter(alike -> file(alike).equals(noted.file()))
            .findFirst()
            .map(alike -> alike.as().name())
            .orElse("");
    Last last =
        new Last(
            desk.said().in(query), noted, name, next.filter(at -> fields.contains(noted)), retry);
    List<Card> cards =
        drying.stream()
            .map(alike -> card(alike, Optional.ofNullable(made.get(alike.as())), last))
            .toList();
    Map<String, Object> values = new HashMap<>();
    values.put("cards", cards);
    values.put("planned", desk.rows(planned));
    boolean atCard =
        last.next().isPresent() || cards.stream().anyMatch(card -> card.said().equals(last.said()));
    values.put("said", atCard ? FlashMessage.NOTHING : last.said());
    values.put("pending", cards.stream().anyMatch(card -> card.state().equals("pending")));
    return desk.page(retry.isEmpty() ? 200 : 422, "plates", "plates", values);
  }

  private Card card(Today.Alike plates, Optional<TrialForecasts> made, Last last) {
    TrialRow row = TrialRow.of(plates.as(), desk.folder(), desk.now());
    Optional<TrialForecast> forecast = made.flatMap(one -> one.forecasts().stream().findFirst());
    return new Card(
        row,
        place(row.file(), plates.numbers().get(0)),
        plates,
        plates.as().plates() == 1 ? "" : numbers(plates),
        made.isEmpty() ? "pending" : forecast.isPresent() ? "done" : "none",
        forecast.map(found -> desk.standing(found, plates)).orElse(null),
        made.map(outcome -> String.join(" ", outcome.failures())).orElse(""),
        last.next().isEmpty() && last.isOf(row.file(), plates) ? last.said() : FlashMessage.NOTHING,
        entries(plates, last));
  }

  private String file(Today.Alike plates) {
    return desk.folder().name(plates.as().file());
  }

  private static String numbers(Today.Alike plates) {
    List<Integer> numbers = plates.numbers();
    return numbers.size() == plates.as().plates()
        ? numbers.size() + " plates"
        : PlateNow.called(numbers);
  }

  /** The plates that have a field each. */
  private static List<Integer> fields(Today.Alike plates) {
    return isMany(plates) ? plates.numbers().subList(0, 1) : plates.numbers();
  }

  private static boolean isMany(Today.Alike plates) {
    return plates.numbers().size() > MOST_FIELDS;
  }

  private List<WeightField> entries(Today.Alike plates, Last last) {
    boolean many = isMany(plates);
    boolean alone = many || plates.as().plates() == 1;
    List<WeightField> entries = new ArrayList<>();
    for (int number : fields(plates)) {
      PlateAddress plate = new PlateAddress(file(plates), number);
      boolean isNext = last.next().filter(plate::equals).isPresent();
      Optional<Retry> again =
          last.retry()
              .filter(one -> one.plate().file().equals(plate.file()))
              .filter(one -> many || one.plate().number() == number);
      entries.add(
          new WeightField(
              number,
              alone ? "Weight with plate, g" : "Plate " + number + " weighs, g",
              "mass-" + place(plate.file(), number),
              again.map(Retry::typed).orElse(""),
              again.map(Retry::refused).orElse(NoteDesk.Refused.NOTHING),
              again.isPresent() || isNext,
              many,
              isNext ? last.said() : FlashMessage.NOTHING,
              last.noted().file().equals(plate.file()) ? "" : last.name()));
    }
    return entries;
  }

  /** The part of a card that waits for its forecast. */
  private Response due(Request request) {
    int plate = request.query().number(PLATE).orElse(1);
    Today.Alike drying =
        Today.alike(List.of(desk.trial(request.query())), desk.now()).stream()
            .filter(plates -> plates.numbers().contains(plate))
            .findFirst()
            .orElseThrow(() -> new HttpError(422, "This plate is not drying any more."));
    Map<Trial, TrialForecasts> made =
        desk.bench().glances(List.of(drying.as()), PageContext.PATIENCE_MS);
    Last nothing =
        new Last(
            FlashMessage.NOTHING, new PlateAddress("", 0), "", Optional.empty(), Optional.empty());
    Card card = card(drying, made.values().stream().findFirst(), nothing);
    return desk.part("plates", "due", Map.of("card", card));
  }

  private Response weigh(Request request) {
    Fields form = request.posted();
    PlateAddress plate = new PlateAddress(form.text(FILE), form.number(PLATE).orElse(1));
    return new NoteDesk(desk)
        .write(
            desk.file(form),
            form,
            NotebookFolder.address(PAGE, plate.file()) + "&" + PLATE + "=" + plate.number(),
            why ->
                shown(
                    request,
                    Optional.of(new Retry(plate, form.text("mass"), why)),
                    PageContext.AT_ONCE_MS));
  }
}
