package starchfilm.web.work;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A map that keeps so many entries and forgets the one that was asked for longest ago. */
public final class LastFew<K, V> extends LinkedHashMap<K, V> {
  private static final long serialVersionUID = 1L;
  private final int most;

  private LastFew(int most) {
    super(16, 0.75f, true);
    this.most = most;
  }

  /** An empty one, safe to share between threads. */
  public static <K, V> Map<K, V> of(int most) {
    return Collections.synchronizedMap(new LastFew<>(most));
  }

  @Override
  protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
    return size() > most;
  }
}
