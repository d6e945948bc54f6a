package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.ChangedMeanwhileException;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.FormField;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** Edits a trial field by field. */
record FieldsPage(PageContext desk) {
  private static final String PAGE = "/trial/edit";
  private static final String FILE = "file";
  private static final String VERSION = "version";

  /** What was typed into a field comes under its path with this in front. */
  private static final String MARK = "f.";

  /** The fields under their headings. */
  private static final Map<String, List<FormField>> GROUPS =
      FormField.ALL.stream()
          .collect(
              Collectors.groupingBy(FormField::group, LinkedHashMap::new, Collectors.toList()));

  void addTo(Routes table) {
    table.read(PAGE, this::edit).send(PAGE, this::save);
  }

  private Response edit(Request request) throws NotWrittenException {
    Path file = desk.file(request.query());
    TrialFileText there = TrialFileText.of(file);
    return page(
        200, file, FieldEdit.shown(there.text()), there.version(), Map.of(), Map.of(), List.of());
  }

  private Response save(Request request) throws NotWrittenException {
    Fields posted = request.posted();
    Path file = desk.file(posted);
    TrialFileText there = TrialFileText.of(file);
    // A form that lacks fields, as no page of ours does, leaves those as they are.
    Map<String, String> typed = new LinkedHashMap<>(FieldEdit.shown(there.text()));
    typed.putAll(typed(posted));
    if (!there.version().equals(desk.ownSaves().madeFrom(posted))) {
      return changed(file, typed, there);
    }
    try {
      desk.ownSaves()
          .saved(
              posted,
              TrialFileText.replace(
                  file,
                  FieldEdit.with(there.text(), typed, new MomentParser(desk.clock())),
                  there.version()));
      return desk.toTrial(file, "Saved.");
    } catch (ChangedMeanwhileException e) {
      return changed(file, typed, e.now());
    } catch (NotWrittenException e) {
      return faulty(file, typed, there.version(), e.faults());
    }
  }

  /** The typed fields stay, and under each that differs stands what the file holds now. */
  private Response changed(Path file, Map<String, String> typed, TrialFileText there)
      throws NotWrittenException {
    Map<String, String> now = FieldEdit.shown(there.text());
    Map<String, String> differing = new LinkedHashMap<>();
    typed.forEach(
        (path, mine) -> {
          String theirs = now.getOrDefault(path, "");
          if (!theirs.equals(mine)) {
            differing.put(path, theirs);
          }
        });
    return page(
        409,
        file,
        typed,
        there.version(),
        Map.of(),
        differing,
        List.of(
            "Somebody else changed this trial meanwhile; nothing was overwritten."
                + " Where your text differs, the text in the file is shown below it."
                + " Change what you need, then save again."));
  }

  private Response faulty(
      Path file, Map<String, String> typed, String version, List<Fault> faults) {
    Map<String, String> atField = new LinkedHashMap<>();
    List<String> elsewhere = new ArrayList<>();
    for (Fault fault : faults) {
      String path = FormField.pathOf(fault.field());
      if (typed.containsKey(path)) {
        atField.merge(path, NoteDesk.atItsField(fault), (a, b) -> a + " " + b);
      } else {
        elsewhere.add(NoteDesk.sentence(fault));
      }
    }
    return page(422, file, typed, version, atField, Map.of(), elsewhere);
  }

  private Response page(
      int status,
      Path file,
      Map<String, String> fields,
      String version,
      Map<String, String> wrong,
      Map<String, String> theirs,
      List<String> why) {
    String name = desk.folder().name(file);
    Map<String, Object> values = new HashMap<>();
    values.put(FILE, name);
    values.put("address", desk.trialAddress(file));
    values.put("textAddress", NotebookFolder.address("/trial/text", name));
    values.put("groups", GROUPS);
    values.put("fields", fields);
    values.put(VERSION, version);
    values.put("wrong", wrong);
    values.put("theirs", theirs);
    values.put("why", why);
    return desk.page(status, "fields", "trials", values);
  }

  private static Map<String, String> typed(Fields posted) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (FormField field : FormField.ALL) {
      if (posted.has(MARK + field.path())) {
        typed.put(field.path(), posted.text(MARK + field.path()));
      }
    }
    return typed;
  }
}
