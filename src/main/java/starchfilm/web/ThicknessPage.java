package starchfilm.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.report.plan.ThicknessSheet;
import starchfilm.request.ThicknessQuestion;
import starchfilm.request.TrialQuestion;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>How thick?</em>: how thick a paste may be poured to be dry by a date. */
record ThicknessPage(PageContext desk) {
  void addTo(Routes table) {
    table.read("/plan/thickness", this::thickness);
  }

  private Response thickness(Request request) {
    Fields form =
        request
            .query()
            .orUsual(Map.of("cooked", "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass"));
    List<Trial> trials = desk.folder().read().trials();
    Map<String, Object> values = new HashMap<>();
    values.put("trials", desk.names(trials));
    return desk.answering(
        "thickness", "plan", form, values, form.has("by"), all -> answer(form, trials, all));
  }

  private void answer(Fields form, List<Trial> trials, Map<String, Object> values) {
    Optional<TrialQuestion.Base> base =
        trials.stream()
            .filter(trial -> desk.folder().name(trial.file()).equals(form.text("base")))
            .findFirst()
            .flatMap(TrialQuestion.Base::of);
    ThicknessQuestion question =
        ThicknessQuestion.read(new FormEntries(form), base, desk.folder().root(), desk.clock());
    values.put("sheet", ThicknessSheet.of(question, desk.workshops().of(question.trial())));
  }
}
