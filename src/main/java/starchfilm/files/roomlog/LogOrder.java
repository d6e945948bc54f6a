package starchfilm.files.roomlog;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Words;
import starchfilm.files.json.Located.Place;

/** Puts the readings of a room log in order of time and says what was odd about it. */
record LogOrder(Findings log) {
  /** A pause shorter than this is no gap: air changes little in it. Judged, no source. */
  private static final double GAP_S = 3 * 3600;

  /** More repeated times than the night on which clocks are put back explains (ratio); judged. */
  private static final double MOST_REPEATED = 0.25;

  private static final int GAPS_LISTED = 5;

  List<LogReading> inOrder(List<LogReading> readings) {
    List<LogReading> sorted = new ArrayList<>(readings);
    sorted.sort(Comparator.comparing(LogReading::time));
    if (!sorted.equals(readings)) {
      log.notice("the rows are not in order of time; they were sorted");
    }
    List<LogReading> single = joinEqualTimes(sorted);
    sayGaps(single);
    saySaturated(single);
    return single;
  }

  /** Readings of the same time become their mean, as when the clocks are put back at night. */
  private List<LogReading> joinEqualTimes(List<LogReading> sorted) {
    Map<Instant, List<LogReading>> byTime =
        sorted.stream()
            .collect(Collectors.groupingBy(LogReading::time, TreeMap::new, Collectors.toList()));
    int joined = sorted.size() - byTime.size();
    if (joined > 0) {
      log.notice(
          "times given more than once take the mean of their readings: "
              + joined
              + " repeated"
              + (joined > sorted.size() * MOST_REPEATED
                  ? "; if they are of several sensors, leave only the rows of the one beside the"
                      + " plate"
                  : ""));
    }
    return byTime.values().stream().map(LogOrder::mean).toList();
  }

  private static LogReading mean(List<LogReading> same) {
    LogReading first = same.get(0);
    return new LogReading(
        first.line(),
        first.time(),
        first.isByTheWall(),
        same.stream().mapToDouble(LogReading::airC).average().orElseThrow(),
        same.stream().mapToDouble(LogReading::humidityPct).average().orElseThrow(),
        first.saidCelsius());
  }

  private void sayGaps(List<LogReading> readings) {
    int gaps = 0;
    for (int i = 1; i < readings.size(); i++) {
      LogReading before = readings.get(i - 1);
      LogReading after = readings.get(i);
      double pause = Duration.between(before.time(), after.time()).toMillis() / 1e3;
      if (pause > GAP_S && ++gaps <= GAPS_LISTED) {
        log.notice(
            Place.of(after.line()),
            "no reading for %s before %s; bridged by a straight line"
                .formatted(Words.span(pause), WallClock.at(after.time())));
      }
    }
    if (gaps > GAPS_LISTED) {
      log.notice((gaps - GAPS_LISTED) + " more gaps of that kind");
    }
  }

  private void saySaturated(List<LogReading> readings) {
    readings.stream()
        .filter(r -> r.humidityPct() > 100)
        .findFirst()
        .ifPresent(r -> log.notice(Place.of(r.line()), "humidities above 100 % are read as 100 %"));
  }
}
