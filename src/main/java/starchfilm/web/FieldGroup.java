package starchfilm.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.files.saving.FormField;

/** Fields that stand together on the form of a trial. */
record FieldGroup(String title, List<FormField> entries) {
  static List<FieldGroup> all() {
    Map<String, List<FormField>> groups = new LinkedHashMap<>();
    for (FormField field : FormField.ALL) {
      groups.computeIfAbsent(field.group(), title -> new ArrayList<>()).add(field);
    }
    return groups.entrySet().stream()
        .map(group -> new FieldGroup(group.getKey(), group.getValue()))
        .toList();
  }
}
