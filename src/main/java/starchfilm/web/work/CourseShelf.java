package starchfilm.web.work;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import starchfilm.forecast.TrialForecast;
import starchfilm.today.ScaleCourse;

/**
 * Keeps what a scale under a plate shows, for each of the forecasts shown last: a page that is
 * loaded again at another moment asks it anew without working it out.
 *
 * <p>Safe to share between threads.
 */
public final class CourseShelf {
  private static final int KEPT = 300;

  private final Map<Key, ScaleCourse> kept = new LinkedHashMap<>(16, 0.75f, true);

  /** The forecast itself: to compare two in full would take longer than to make one. */
  private record Key(TrialForecast forecast) {
    @Override
    @SuppressWarnings("ReferenceEquality") // the very forecast, as the comment above says
    public boolean equals(Object other) {
      return other instanceof Key that && that.forecast == forecast;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(forecast);
    }
  }

  /**
   * The course of a plate, worked out now unless it is kept.
   *
   * @param forecast the plate's forecast
   * @return what a scale shows
   */
  public ScaleCourse of(TrialForecast forecast) {
    Key key = new Key(forecast);
    synchronized (kept) {
      ScaleCourse known = kept.get(key);
      if (known != null) {
        return known;
      }
    }
    ScaleCourse fresh = ScaleCourse.of(forecast);
    synchronized (kept) {
      kept.put(key, fresh);
      if (kept.size() > KEPT) {
        Iterator<Key> oldest = kept.keySet().iterator();
        oldest.next();
        oldest.remove();
      }
    }
    return fresh;
  }
}
