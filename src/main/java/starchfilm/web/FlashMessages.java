package starchfilm.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.web.http.Fields;

/**
 * What a page says once after something was saved. The address that the browser is sent on to only
 * carries a number, so nobody can make a page say something by a link.
 */
final class FlashMessages {
  private static final String FIELD = "said";
  private static final int REMEMBERED = 100;

  private final Map<String, List<String>> sentences = new LinkedHashMap<>();
  private int count;

  /**
   * Adds sentences to an address.
   *
   * @param address a path with or without a query
   * @param saying what the page there says
   * @return the address to send the browser on to
   */
  synchronized String on(String address, List<String> saying) {
    count++;
    String number = String.valueOf(count);
    sentences.put(number, List.copyOf(saying));
    if (sentences.size() > REMEMBERED) {
      sentences.remove(sentences.keySet().iterator().next());
    }
    return address + (address.contains("?") ? "&" : "?") + FIELD + "=" + number;
  }

  /**
   * What to say on a page.
   *
   * @param query the page's query
   * @return the sentences; none where nothing was saved
   */
  synchronized List<String> in(Fields query) {
    return sentences.getOrDefault(query.text(FIELD), List.of());
  }
}
