package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.FirstFaults;

/** A file of the notebook that could not be read. */
record FileTrouble(String file, List<String> sentences) {
  static List<FileTrouble> of(List<Fault> faults, NotebookFolder folder) {
    Map<String, List<Fault>> byFile = new LinkedHashMap<>();
    for (Fault fault : faults) {
      byFile.computeIfAbsent(folder.name(Path.of(fault.file())), f -> new ArrayList<>()).add(fault);
    }
    return byFile.entrySet().stream()
        .map(
            file ->
                new FileTrouble(
                    file.getKey(),
                    FirstFaults.ofOneFile(file.getValue(), FileTrouble::withoutFile, "and ")))
        .toList();
  }

  private static String withoutFile(Fault fault) {
    String sentence = fault.sentence().substring(fault.file().length());
    // After the name stands ", " or ": ".
    return sentence.substring(2);
  }
}
