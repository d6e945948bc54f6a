package starchfilm.files.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The faults of many files as sentences, as many as somebody can read. */
public final class FirstFaults {
  private static final int OF_ONE_FILE = 10;
  private static final int FILES = 100;

  private FirstFaults() {}

  /**
   * The sentences.
   *
   * @param faults all faults
   * @return ten of a file and a hundred files; what is left out is counted
   */
  public static List<String> sentences(List<Fault> faults) {
    Map<String, List<Fault>> byFile = new LinkedHashMap<>();
    faults.forEach(f -> byFile.computeIfAbsent(f.file(), file -> new ArrayList<>()).add(f));
    List<String> sentences = new ArrayList<>();
    byFile.entrySet().stream()
        .limit(FILES)
        .forEach(
            entry -> {
              List<Fault> of = entry.getValue();
              of.stream().limit(OF_ONE_FILE).map(Fault::sentence).forEach(sentences::add);
              if (of.size() > OF_ONE_FILE) {
                sentences.add(
                    PlainLine.of(entry.getKey())
                        + ": and "
                        + (of.size() - OF_ONE_FILE)
                        + " more; fix these first");
              }
            });
    if (byFile.size() > FILES) {
      sentences.add("and faults in " + (byFile.size() - FILES) + " more files; fix these first");
    }
    return sentences;
  }
}
