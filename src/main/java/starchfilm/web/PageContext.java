package starchfilm.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.forecast.TrialForecast;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.PageRenderer;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.today.PlateNow;
import starchfilm.report.words.PlainWords;
import starchfilm.request.Mistake;
import starchfilm.request.RefusedRequestException;
import starchfilm.today.Standing;
import starchfilm.today.Today;
import starchfilm.web.http.CsrfFields;
import starchfilm.web.http.ErrorPages;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Response;
import starchfilm.web.http.SignedIn;
import starchfilm.web.http.Visitor;
import starchfilm.web.work.LastMade;
import starchfilm.web.work.Workbench;

/**
 * What every page works with.
 *
 * @param clock the clock on the wall, in the reader's zone
 * @param bench where long work is done
 * @param assets style, script and icon
 */
record PageContext(
    NotebookFolder folder,
    Clock clock,
    Workshops workshops,
    Workbench bench,
    PageRenderer renderer,
    Assets assets,
    CsrfFields seal,
    FlashMessages said,
    OwnSaves ownSaves)
    implements ErrorPages {
  /** A forecast that is made this soon is on the page at once (ms). */
  static final long AT_ONCE_MS = 600;

  /** How long a part of a page, or a reader without script, waits for forecasts (ms). */
  static final long PATIENCE_MS = 60_000;

  private static final DateTimeFormatter SEEN =
      DateTimeFormatter.ofPattern("EEE d MMM, H:mm", Locale.ENGLISH);

  /**
   * Fills a page.
   *
   * @param template its name in the folder {@code web}
   */
  String html(String template, String here, Map<String, Object> values) {
    return renderer.render("web/" + template, framed(here, values));
  }

  /**
   * Fills a part of a page, for a script.
   *
   * @param template the page's name in the folder {@code web}
   */
  Response part(String template, String fragment, Map<String, Object> values) {
    return Response.page(renderer.render("web/" + template, fragment, framed("", values)));
  }

  private Map<String, Object> framed(String here, Map<String, Object> values) {
    Map<String, Object> all = new HashMap<>(values);
    all.put("here", here);
    all.put("desk", this);
    all.put("seal", seal);
    return all;
  }

  /** Whom a page is shown to. */
  public Visitor visitor() {
    return seal.visitor();
  }

  /** When a browser that was let in last asked for something. */
  public String seen(SignedIn browser) {
    return SEEN.format(browser.lastSeen().atZone(clock.getZone()));
  }

  /** Why what was learnt cannot be read. */
  public Optional<String> untaught() {
    return workshops.fault(folder.root()).map(PageContext::unread);
  }

  /** A page names no folder of the machine. */
  private static String unread(Fault fault) {
    return Workshop.FILE_NAME + fault.sentence().substring(fault.file().length()) + ".";
  }

  /** A page as an answer. */
  Response page(String template, String here, Map<String, Object> values) {
    return Response.page(html(template, here, values));
  }

  /** A page that says something is wrong, or does not. */
  Response page(int status, String template, String here, Map<String, Object> values) {
    return Response.page(status, html(template, here, values));
  }

  /** What a form asks for, or where that is refused its page again with why. */
  Response orAgain(
      LastMade.Making<Response, NotWrittenException> form, Function<List<String>, Response> again) {
    try {
      return form.make();
    } catch (RefusedRequestException | NotWrittenException e) {
      return again.apply(why(e));
    }
  }

  /**
   * A page that answers the form on it. A refusal stands at the input it is about, and the first
   * such input has the focus.
   *
   * @param form what the form holds
   * @param values what it shows in any case, and where nothing is asked yet
   * @param asked whether the form was filled in
   * @param answer adds what it shows then; else the page says why not
   */
  Response answering(
      String template,
      String here,
      Fields form,
      Map<String, Object> values,
      boolean asked,
      Consumer<Map<String, Object>> answer) {
    values.put("form", form);
    values.put("wrong", Map.of());
    values.put("first", "");
    try {
      if (asked) {
        answer.accept(values);
      }
      return page(template, here, values);
    } catch (RefusedRequestException e) {
      Map<String, String> wrong = FormEntries.atInputs(whole(e.mistakes()), form);
      values.put("wrong", wrong);
      values.put("first", wrong.containsKey("") ? "" : wrong.keySet().iterator().next());
      return page(422, template, here, values);
    }
  }

  @Override
  public Response page(HttpError refusal, boolean partial) {
    Map<String, Object> values = Map.of("sentence", refusal.sentence());
    String html =
        partial ? renderer.render("web/error", "part", values) : html("error", "", values);
    return Response.page(refusal.status(), html);
  }

  /** What was asked cannot be meant, or what was typed cannot be written. */
  @Override
  public Optional<HttpError> refusal(Throwable why) {
    if (why instanceof HttpError error) {
      return Optional.of(error);
    }
    return Optional.of(String.join(" ", why(why)))
        .filter(sentence -> !sentence.isEmpty())
        .map(sentence -> new HttpError(422, sentence));
  }

  /** With a capital and a full stop. */
  private static List<Mistake> whole(List<Mistake> mistakes) {
    return mistakes.stream()
        .map(
            one -> {
              String begun = PlainWords.capital(one.sentence());
              return new Mistake(one.field(), begun.matches(".*[.?]") ? begun : begun + ".");
            })
        .toList();
  }

  private static List<String> why(Throwable why) {
    if (why instanceof RefusedRequestException refused) {
      return whole(refused.mistakes()).stream().map(Mistake::sentence).toList();
    }
    return why instanceof NotWrittenException notWritten
        ? NoteDesk.sentences(notWritten)
        : List.of();
  }

  /** Goes on to a page, which says once what was done. */
  Response to(String address, String... saying) {
    return Response.seeOther(said.on(address, List.of(saying)));
  }

  /** Goes on to the page of a trial, which says once what was done. */
  Response toTrial(Path file, String... saying) {
    return to(trialAddress(file), saying);
  }

  /** Saves a new trial to be poured, and goes on to its page. */
  Response begun(String name, String text, String changed) throws NotWrittenException {
    return toTrial(
        folder.create(name, text),
        "Saved as a new trial. " + changed + "Note its pour as soon as it is poured.");
  }

  /** The file of the trial that a form or an address is about. */
  Path file(Fields fields) {
    return folder.trialFile(fields.text("file"));
  }

  /** Trials as a list has them. */
  List<TrialRow> rows(List<Trial> trials) {
    return trials.stream().map(trial -> TrialRow.of(trial, folder, now())).toList();
  }

  /** The trial that a form or an address is about. */
  Trial trial(Fields fields) {
    return folder.trial(file(fields)).orElseThrow(PageContext::faulty);
  }

  /** Nothing but its text can be shown of a trial with a fault. */
  static HttpError faulty() {
    return new HttpError(422, "This trial has a fault; fix its text first.");
  }

  /** How plates stand by a forecast. */
  PlateNow standing(TrialForecast forecast, Today.Alike plates) {
    return new PlateNow(Standing.of(forecast, bench.course(forecast), plates.numbers(), now()));
  }

  /** The names of trials by their files, to choose one of. */
  Map<String, String> names(List<Trial> trials) {
    Map<String, String> names = new LinkedHashMap<>();
    trials.forEach(trial -> names.put(folder.name(trial.file()), trial.name()));
    return names;
  }

  /** Weigh-out sheets and labels to print. */
  PlanReport printed() {
    return new PlanReport(renderer);
  }

  /** The page of a trial. */
  String trialAddress(Path file) {
    return NotebookFolder.address("/trial", folder.name(file));
  }

  /** The time by the clock on the wall. */
  LocalDateTime now() {
    return LocalDateTime.now(clock);
  }
}
