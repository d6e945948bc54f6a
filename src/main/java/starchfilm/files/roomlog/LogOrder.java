package starchfilm.files.roomlog;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Words;

/** Puts the readings of a room log in order of time and says what was odd about it. */
final class LogOrder {
  /** A pause shorter than this is no gap: air changes little in it. Judged, no source. */
  private static final double GAP_S = 3 * 3600;

  private static final int GAPS_LISTED = 5;

  private final Findings log;

  LogOrder(Findings log) {
    this.log = log;
  }

  List<LogReading> inOrder(List<LogReading> readings) {
    List<LogReading> sorted = new ArrayList<>(readings);
    sorted.sort(Comparator.comparing(LogReading::time));
    if (!sorted.equals(readings)) {
      log.notice(OptionalInt.empty(), "the rows are not in order of time; they were sorted");
    }
    List<LogReading> single = joinEqualTimes(sorted);
    sayGaps(single);
    saySaturated(single);
    return single;
  }

  /** Readings of the same time become their mean, as when the clocks are put back at night. */
  private List<LogReading> joinEqualTimes(List<LogReading> sorted) {
    List<LogReading> single = new ArrayList<>();
    int joined = 0;
    for (int i = 0; i < sorted.size(); ) {
      int end = i + 1;
      double air = sorted.get(i).airC();
      double humidity = sorted.get(i).humidityPct();
      while (end < sorted.size() && sorted.get(end).time().equals(sorted.get(i).time())) {
        air += sorted.get(end).airC();
        humidity += sorted.get(end).humidityPct();
        end++;
      }
      int count = end - i;
      joined += count - 1;
      single.add(
          new LogReading(
              sorted.get(i).line(),
              sorted.get(i).time(),
              air / count,
              humidity / count,
              sorted.get(i).saidCelsius()));
      i = end;
    }
    if (joined > 0) {
      log.notice(
          OptionalInt.empty(),
          "times given more than once take the mean of their readings: " + joined + " repeated");
    }
    return single;
  }

  private void sayGaps(List<LogReading> readings) {
    int gaps = 0;
    for (int i = 1; i < readings.size(); i++) {
      LogReading before = readings.get(i - 1);
      LogReading after = readings.get(i);
      double pause = Duration.between(before.time(), after.time()).toMillis() / 1e3;
      if (pause > GAP_S && ++gaps <= GAPS_LISTED) {
        log.notice(
            OptionalInt.of(after.line()),
            "no reading for "
                + Words.span(pause)
                + " before "
                + after.time()
                + "; bridged by a straight line");
      }
    }
    if (gaps > GAPS_LISTED) {
      log.notice(OptionalInt.empty(), (gaps - GAPS_LISTED) + " more gaps of that kind");
    }
  }

  private void saySaturated(List<LogReading> readings) {
    readings.stream()
        .filter(r -> r.humidityPct() > 100)
        .findFirst()
        .ifPresent(
            r -> log.notice(OptionalInt.of(r.line()), "humidities above 100 % are read as 100 %"));
  }
}
