package starchfilm.numerics.evidence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Where a number comes from, and how far that was checked.
 *
 * @param citation author, year, title or journal, table or equation; or "assumed, no source"
 * @param check how far the figure was checked
 */
public record Source(String citation, Check check) {
  /**
   * Each source once.
   *
   * @param sources as they come, some more than once
   * @return the first of each citation, in that order
   */
  public static List<Source> once(Stream<Source> sources) {
    Map<String, Source> cited = new LinkedHashMap<>();
    sources.forEach(source -> cited.putIfAbsent(source.citation(), source));
    return List.copyOf(cited.values());
  }
}
