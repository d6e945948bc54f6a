package starchfilm.report;

import java.util.List;

/**
 * The surroundings of a comparison: where its trials have pages of their own, and which trial the
 * others are held against.
 *
 * @param addresses for each trial its page; empty where the comparison stands alone and shows each
 *     trial itself
 * @param bases for each trial the page that holds the others against it; empty likewise
 * @param base the place of the trial the others are held against, from 0
 */
public record Around(List<String> addresses, List<String> bases, int base) {
  /**
   * Of a comparison that stands alone.
   *
   * @param base the place of the trial the others are held against, from 0
   * @return nothing around it
   */
  public static Around nothing(int base) {
    return new Around(List.of(), List.of(), base);
  }

  String address(int index) {
    return addresses.isEmpty() ? "" : addresses.get(index);
  }

  String baseAddress(int index) {
    return bases.isEmpty() || index == base ? "" : bases.get(index);
  }
}
