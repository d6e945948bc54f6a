package starchfilm.web;

import java.util.List;

/** What people come for: a page, what they fill in there, the button, and what it says then. */
enum Journey {
  START_A_TRIAL(
      "/trials",
      "Start a trial",
      List.of(new Typed("Name of the trial", "Kitchen film")),
      "Start with this recipe",
      "Saved as a new trial"),
  POUR_IT_AGAIN(
      "/trial?file=" + DryingTrial.FILE,
      "Pour it again",
      List.of(new Typed("Name of the new trial", "Once more")),
      "Start a new trial like this",
      "Saved as a new trial"),
  WEIGH_A_PLATE("/plates", "", List.of(new Typed("Weight with plate", "690.5")), "Note", "Noted: "),
  NOTE_A_FAULT(
      "/trial?file=" + DryingTrial.FILE,
      "Something else > A fault",
      List.of(new Typed("In your words", "a tear at the rim")),
      "Note the fault",
      "Noted: "),
  NOTE_A_WEIGHING(
      "/trial?file=" + DryingTrial.FILE,
      "",
      List.of(new Typed("The scale shows", "690.5")),
      "Note the weighing",
      "Noted: "),
  EDIT_A_TRIAL(
      "/trial/edit?file=" + DryingTrial.FILE,
      "",
      List.of(new Typed("Name", "Renamed"), new Typed("Relative humidity, %", "55")),
      "Save",
      "Saved."),
  EDIT_THE_FILE(
      "/trial/text?file=" + DryingTrial.FILE,
      "",
      List.of(new Typed("Its text", DryingTrial.textNamed("Typed anew"))),
      "Save",
      "Saved."),
  ASSAY_A_JAR(
      "/jar?origin=bought",
      "",
      List.of(new Typed("What the jar holds", "250"), new Typed("Glycerol by the label", "99.5")),
      "Work out what is in the jar",
      "In the jar"),
  PLAN_FROM_WISHES(
      "/plan/wishes",
      "",
      List.of(new Typed("Glycerol in the jar", "250")),
      "Find recipes",
      "What can be made"),
  MOVE_A_RECIPE("/plan", "", List.of(new Typed("Name", "Moved")), "Save", "Saved as a new trial"),
  LEARN(
      "/learnt",
      "",
      List.of(),
      "Learn from the trials of this folder",
      "Learnt; every forecast from now on uses it."),
  COMPARE(
      "/compare/choice?tick=all",
      "",
      List.of(),
      "Compare those ticked",
      "When each plate is ready");

  /**
   * What is typed into a field.
   *
   * @param label words of its label
   * @param text the text
   */
  record Typed(String label, String text) {}

  final String path;

  /** What to unfold first, from the outside in. */
  final List<String> folds;

  final List<Typed> fields;
  final String button;
  final String reached;

  Journey(String path, String fold, List<Typed> fields, String button, String reached) {
    this.path = path;
    this.folds = fold.isEmpty() ? List.of() : List.of(fold.split(" > ", -1));
    this.fields = fields;
    this.button = button;
    this.reached = reached;
  }
}
