package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.report.TrialList.Order;

/** The list that hundreds of trials begin with, on the demo notebook. */
class TrialListTest {
  private static final List<TrialForecast> GARDEN =
      NotebookReader.read(List.of(Path.of("formulations"))).trials().stream()
          .map(new TrialForecaster(SameForAll.TEXTBOOK)::forecast)
          .toList();

  private final TrialList list = TrialList.of(GARDEN);

  @Test
  void standsInTheOrderOfTheNotebook() {
    assertThat(list.orders().get(0)).isEqualTo(Order.POUR);
    assertThat(list.rows())
        .extracting(row -> row.trial().trial().name())
        .isEqualTo(GARDEN.stream().map(trial -> trial.trial().name()).toList());
    assertThat(IntStream.range(0, GARDEN.size()).map(row -> place(row, Order.POUR)))
        .containsExactlyElementsOf(IntStream.range(0, GARDEN.size()).boxed().toList());
  }

  @Test
  void putsWordsInTheOrderOfTheAlphabet() {
    assertThat(sorted(Order.NAME, trial -> trial.trial().name())).isSorted();
    assertThat(sorted(Order.ROOM, trial -> trial.trial().casting().place().name())).isSorted();
  }

  @Test
  void putsFiguresInTheOrderThatIsLookedFor() {
    assertRising(Order.GLYCEROL, trial -> trial.composition().glycerolPerDryStarch());
    assertRising(Order.THICKNESS, trial -> trial.trial().casting().pour().wetThicknessM().value());
    assertRising(Order.DRY, trial -> trial.drying().dryThroughS().middle());
    assertRising(Order.RATING, trial -> -trial.trial().seen().rating().orElse(0));
    assertRising(Order.FAULTS, trial -> -trial.trial().seen().faults().size());
  }

  private void assertRising(Order order, ToDoubleFunction<TrialForecast> figure) {
    List<Double> figures = sorted(order, figure::applyAsDouble);
    assertThat(figures).isSorted().hasSizeGreaterThan(5);
    assertThat(figures.get(0)).isLessThan(figures.get(figures.size() - 1));
  }

  private <T> List<T> sorted(Order order, Function<TrialForecast, T> figure) {
    List<Integer> rows = new ArrayList<>(IntStream.range(0, GARDEN.size()).boxed().toList());
    rows.sort(Comparator.comparingInt(row -> place(row, order)));
    return rows.stream().map(GARDEN::get).map(figure).toList();
  }

  private int place(int row, Order order) {
    String places = list.rows().get(row).places();
    Matcher found = Pattern.compile("--o" + order.ordinal() + ":(\\d+);").matcher(places);
    assertThat(found.find()).as(places).isTrue();
    return Integer.parseInt(found.group(1));
  }
}
