package starchfilm.advice;

import starchfilm.casting.trial.Trial;

/** What a trial file says and what was merely assumed for it. */
final class Notes {
  private Notes() {}

  /**
   * Whether a file says something of a field, so that its figure is more than an assumption.
   *
   * @param field the field's path, such as {@code pour.paste_C}
   */
  static boolean hold(Trial trial, String field) {
    return trial.notRecorded().stream()
        .noneMatch(
            missing -> missing.field().equals(field) || field.startsWith(missing.field() + "."));
  }
}
