package starchfilm.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import starchfilm.web.http.Fields;

/**
 * Turns the fields of a form into the words of a command, and its sentences back into the form's.
 */
final class Words {
  private final Fields fields;
  private final List<String> words = new ArrayList<>();
  private final Map<String, String> labels = new LinkedHashMap<>();

  Words(Fields fields) {
    this.fields = fields;
  }

  /** Names the field that stands for an option, whether or not the option is used. */
  Words named(String option, String label) {
    labels.put(option, label);
    return this;
  }

  /** An option with one value, where the field is filled in. */
  Words option(String option, String field, String label) {
    return option(option, field, "", label);
  }

  /** The same; a bare number gets this unit. */
  Words option(String option, String field, String unit, String label) {
    labels.put(option, label);
    String typed = typed(field, label);
    if (!typed.isEmpty()) {
      words.add(option + "=" + withUnit(typed, unit));
    }
    return this;
  }

  /** An option with several values, where the first field is filled in. */
  Words option(String option, List<String> manyFields, List<String> units, String label) {
    labels.put(option, label);
    if (typed(manyFields.get(0), label).isEmpty()) {
      return this;
    }
    words.add(option);
    for (int i = 0; i < manyFields.size(); i++) {
      String typed = typed(manyFields.get(i), label);
      if (typed.isEmpty()) {
        throw new Questions.NotAnswered(
            label + ": one of its fields is empty; fill in all of them.");
      }
      words.add(withUnit(typed, units.get(i)));
    }
    return this;
  }

  /** A value made of several fields. */
  Words made(String option, String value, String label) {
    labels.put(option, label);
    words.add(option + "=" + value);
    return this;
  }

  List<String> list() {
    return List.copyOf(words);
  }

  /** A sentence of the command in the words of the form. */
  String inTheFormsWords(String sentence) {
    String told = sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    List<String> longestFirst = new ArrayList<>(labels.keySet());
    longestFirst.sort((a, b) -> b.length() - a.length());
    for (String option : longestFirst) {
      String label = labels.getOrDefault(option, option);
      // At the head of a sentence a name needs no marks to be told from the rest.
      told = told.startsWith(option) ? label + told.substring(option.length()) : told;
      told = told.replace(option, "“" + label + "”");
    }
    return told;
  }

  /**
   * What was typed into a field; an amount never begins like an option of the command.
   *
   * @param field the field
   * @param label its name on the page
   * @return the text; empty where nothing was typed
   */
  String typed(String field, String label) {
    String typed = fields.text(field);
    if (typed.startsWith("-") || typed.startsWith("@") || typed.indexOf('\n') >= 0) {
      throw new Questions.NotAnswered(
          label + ": \"" + typed + "\" given; write an amount that begins with a digit.");
    }
    return typed;
  }

  /** A bare number with its unit; anything else as it was typed. */
  static String withUnit(String typed, String unit) {
    return typed.matches("[0-9][0-9.,]*") && !unit.isEmpty() ? typed + " " + unit : typed;
  }
}
