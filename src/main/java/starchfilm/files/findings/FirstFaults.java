package starchfilm.files.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

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
            file ->
                sentences.addAll(
                    ofOneFile(
                        file.getValue(), Fault::sentence, PlainLine.of(file.getKey()) + ": and ")));
    if (byFile.size() > FILES) {
      sentences.add("and faults in " + (byFile.size() - FILES) + " more files; fix these first");
    }
    return sentences;
  }

  /**
   * The first faults of one file.
   *
   * @param faults its faults
   * @param words how one is worded
   * @param and what stands before the number of those left out
   * @return ten at most, and how many more there are
   */
  public static List<String> ofOneFile(
      List<Fault> faults, Function<Fault, String> words, String and) {
    List<String> sentences =
        new ArrayList<>(faults.stream().limit(OF_ONE_FILE).map(words).toList());
    if (faults.size() > OF_ONE_FILE) {
      sentences.add(and + (faults.size() - OF_ONE_FILE) + " more; fix these first");
    }
    return sentences;
  }
}
