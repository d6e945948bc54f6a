package starchfilm.web;

import java.util.Map;
import starchfilm.web.http.Fields;
import starchfilm.web.work.LastFew;

/**
 * Which version of a file a form saved. Who goes back to a form that was saved, corrects it and
 * saves again edits that version, though the form still carries the one before.
 *
 * <p>Safe to share between threads.
 */
final class OwnSaves {
  private static final String FORM = "form";
  private static final String VERSION = "version";
  private static final int REMEMBERED = 200;

  private final Map<String, String> versions = LastFew.of(REMEMBERED);

  /** Remembers what a form saved. */
  void saved(Fields form, String version) {
    versions.put(form.text(FORM), version);
  }

  /**
   * The version a form was made from.
   *
   * @return the version it saved last, or else the one it carries
   */
  String madeFrom(Fields form) {
    String carried = form.text(VERSION);
    return form.has(FORM) ? versions.getOrDefault(form.text(FORM), carried) : carried;
  }
}
