package starchfilm.web;

import static java.math.RoundingMode.HALF_UP;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.chart.Scale;
import starchfilm.request.Handle;
import starchfilm.request.Handle.Travel;
import starchfilm.request.Sketch;

/**
 * A handle as a slider with its track.
 *
 * @param value where it stands
 * @param at the same as a place on the track
 * @param from where it stood before it was moved, as a place on the track
 * @param usualFrom low end of what is usual, as a place on the track
 * @param said where it stands, as a figure
 */
record HandleView(
    String key,
    String label,
    String least,
    String most,
    String step,
    String value,
    String at,
    String from,
    boolean moved,
    String usualFrom,
    String usualWidth,
    String said) {
  static List<HandleView> of(Casting from, Sketch sketch) {
    List<HandleView> views = new ArrayList<>();
    for (Handle handle : Handle.values()) {
      Double value = sketch.figures().get(handle);
      if (value != null) {
        views.add(of(handle, from, value));
      }
    }
    return views;
  }

  private static HandleView of(Handle handle, Casting from, double value) {
    Travel ends = handle.ends(from);
    Scale track = Scale.linear(ends.least(), ends.most(), 0, 100);
    double low = track.at(handle.usual().least());
    return new HandleView(
        handle.key(),
        handle.label() + ", " + handle.unit(),
        Figures.noted(ends.least()),
        Figures.noted(ends.most()),
        Figures.noted(handle.step()),
        Figures.noted(value),
        track.place(value) + "%",
        track.place(handle.of(from)) + "%",
        value != handle.of(from),
        low + "%",
        track.at(handle.usual().most()) - low + "%",
        BigDecimal.valueOf(value)
            .setScale(BigDecimal.valueOf(handle.step()).stripTrailingZeros().scale(), HALF_UP)
            .toPlainString());
  }
}
