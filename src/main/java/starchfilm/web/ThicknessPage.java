package starchfilm.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.report.plan.ThicknessSheet;
import starchfilm.request.RefusedRequestException;
import starchfilm.request.ThicknessQuestion;
import starchfilm.request.TrialQuestion;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>How thick?</em>: how thick a paste may be poured to be dry by a date. */
record ThicknessPage(PageContext desk) {
  private static final String COOKED = "cooked";
  private static final String EXAMPLE = "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass";

  void addTo(Routes table) {
    table.read("/plan/thickness", this::thickness);
  }

  private Response thickness(Request request) {
    Fields form = form(request.query());
    List<Trial> trials = desk.folder().read().trials();
    Map<String, Object> values = new HashMap<>();
    values.put("trials", desk.names(trials));
    return desk.answering(
        "thickness", "plan", form, values, form.has("by"), all -> answer(form, trials, all));
  }

  /** With an example where nothing is written; of a trial that is chosen it changes nothing. */
  private static Fields form(Fields asked) {
    return asked.text("base").isEmpty()
        ? asked.orUsual(Map.of(COOKED, EXAMPLE))
        : asked.text(COOKED).equals(EXAMPLE) ? asked.without(COOKED) : asked;
  }

  private void answer(Fields form, List<Trial> trials, Map<String, Object> values) {
    Optional<TrialQuestion.Base> base = base(form.text("base"), trials);
    ThicknessQuestion question =
        ThicknessQuestion.read(new FormEntries(form), base, desk.folder().root(), desk.clock());
    values.put("sheet", ThicknessSheet.of(question, desk.workshops().of(question.trial())));
  }

  /** The trial that was chosen, if any; one that is gone meanwhile stands for no other. */
  private Optional<TrialQuestion.Base> base(String chosen, List<Trial> trials) {
    Optional<TrialQuestion.Base> base =
        trials.stream()
            .filter(trial -> desk.folder().name(trial.file()).equals(chosen))
            .findFirst()
            .flatMap(TrialQuestion.Base::of);
    if (base.isEmpty() && !chosen.isEmpty()) {
      throw RefusedRequestException.of(
          List.of(
              "the trial %s is not among the sound ones of this folder any more; choose another, or see the page Trials"
                  .formatted(chosen)));
    }
    return base;
  }
}
