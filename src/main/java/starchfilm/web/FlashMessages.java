package starchfilm.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import starchfilm.web.http.Fields;
import starchfilm.web.work.LastFew;

/**
 * What a page says once after something was saved. The address that the browser is sent on to only
 * carries a number, so nobody can make a page say something by a link.
 */
final class FlashMessages {
  private static final String FIELD = "said";
  private static final int REMEMBERED = 100;

  private final Map<String, FlashMessage> remembered = LastFew.of(REMEMBERED);
  private final AtomicInteger count = new AtomicInteger();

  /**
   * What a page says.
   *
   * @param number its number in the address; empty where nothing is said
   * @param undo how to take it back, if it can be
   */
  record FlashMessage(String number, List<String> sentences, Optional<UndoOffer> undo) {
    static final FlashMessage NOTHING = new FlashMessage("", List.of(), Optional.empty());

    /** True where it is about this trial. */
    boolean isAbout(String file) {
      return undo.filter(back -> back.file().equals(file)).isPresent();
    }
  }

  /**
   * How something saved is taken back.
   *
   * @param what what was saved, for the sentence
   */
  record UndoOffer(String file, String version, String what, String page, String button) {
    UndoOffer then(String after, String next) {
      return new UndoOffer(file, after, what, page, next);
    }
  }

  /**
   * Adds sentences to an address.
   *
   * @param address a path with or without a query
   */
  String on(String address, List<String> saying) {
    return on(address, saying, Optional.empty());
  }

  /**
   * Adds sentences to an address.
   *
   * @param address a path with or without a query
   * @param undo how to take back what was saved, if it can be
   */
  String on(String address, List<String> saying, Optional<UndoOffer> undo) {
    String number = String.valueOf(count.incrementAndGet());
    remembered.put(number, new FlashMessage(number, List.copyOf(saying), undo));
    return address + (address.contains("?") ? "&" : "?") + FIELD + "=" + number;
  }

  /**
   * What to say on a page.
   *
   * @param query the page's query, or a form that tells the number
   * @return nothing where nothing was saved
   */
  FlashMessage in(Fields query) {
    return remembered.getOrDefault(query.text(FIELD), FlashMessage.NOTHING);
  }
}
