package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.words.Anchor;

/**
 * The head table: what the trials share, said once, and what differs, side by side.
 *
 * @param same what is the same in every trial; everything, where there is only one trial
 * @param blocks the trials, a few columns at a time
 */
record SideBySide(List<Same> same, List<Block> blocks) {
  /** Columns that fit an A4 page. */
  static final int COLUMNS = 6;

  /** Of more trials than this only the last stand side by side; a page of more opens slowly. */
  private static final int BESIDE_UP_TO = 1_000;

  /**
   * Something every trial shares.
   *
   * @param label what
   * @param text its value
   */
  record Same(String label, String text) {}

  /**
   * The head of a column.
   *
   * @param number the trial's number on this page
   * @param anchor where its own part of the page is
   * @param name what its maker calls it
   * @param apart true where the page has such a part
   */
  record Head(int number, String anchor, String name, boolean apart) {}

  /**
   * Some trials side by side.
   *
   * @param heads the columns
   * @param differing rows of what was done differently
   * @param forecast rows of what is expected
   * @param happened rows of what came of it; none where nothing was noted
   */
  record Block(List<Head> heads, List<Row> differing, List<Row> forecast, List<Row> happened) {
    /**
     * The number of its first trial.
     *
     * @return from 1
     */
    public int first() {
      return heads.get(0).number();
    }

    /**
     * The number of its last trial.
     *
     * @return from 1
     */
    public int last() {
      return heads.get(heads.size() - 1).number();
    }
  }

  /**
   * A row.
   *
   * @param label what
   * @param cells one a trial
   */
  record Row(String label, List<Cell> cells) {}

  /**
   * A cell.
   *
   * @param text what it says
   * @param small a second, smaller line, such as a range; may be empty
   * @param changed how it stands to the trial on its left
   * @param figure a bar or a strip below the text, if any
   */
  record Cell(String text, String small, Changed changed, CellFigure figure) {
    Cell withoutFigure() {
      return new Cell(text, small, changed, CellFigure.none());
    }
  }

  /** How a cell stands to the trial on its left. */
  enum Changed {
    /** The same, or there is nothing on its left. */
    SAME("", ""),
    /** More than on its left. */
    UP("▲", "more than in the trial before"),
    /** Less than on its left. */
    DOWN("▼", "less than in the trial before"),
    /** Something else than on its left. */
    OTHER("◆", "not as in the trial before");

    private final String sign;
    private final String words;

    Changed(String sign, String words) {
      this.sign = sign;
      this.words = words;
    }

    /**
     * A sign for the eye.
     *
     * @return one character, or nothing for the same
     */
    public String sign() {
      return sign;
    }

    /**
     * The sign in words.
     *
     * @return a clause, or nothing for the same
     */
    public String words() {
      return words;
    }
  }

  /**
   * Lays trials side by side.
   *
   * @param trials in the order they are shown; at least one
   * @return the table
   */
  static SideBySide of(List<TrialForecast> trials) {
    List<List<Noted>> noted = trials.stream().map(Noted::of).toList();
    List<Same> same = new ArrayList<>();
    List<Row> differing = new ArrayList<>();
    for (int label = 0; label < noted.get(0).size(); label++) {
      List<Noted> row = column(noted, label);
      if (row.stream().map(Noted::text).distinct().count() == 1) {
        same.add(new Same(row.get(0).label(), row.get(0).text()));
      } else {
        differing.add(differingRow(row));
      }
    }
    return new SideBySide(
        same, blocks(trials, differing, ForecastRows.of(trials), HappenedRows.of(trials)));
  }

  /**
   * What decides the film and was done differently from one trial to the next.
   *
   * @param before the trial before
   * @param after the trial
   * @return such as {@code wet thickness 3.2 → 2.4 mm}, in the order of the table
   */
  static List<String> changes(TrialForecast before, TrialForecast after) {
    List<Noted> was = Noted.of(before);
    List<Noted> is = Noted.of(after);
    List<String> changes = new ArrayList<>();
    for (int i = 0; i < was.size(); i++) {
      if (is.get(i).decides() && !was.get(i).text().equals(is.get(i).text())) {
        changes.add(is.get(i).label() + " " + was.get(i).text() + " → " + is.get(i).text());
      }
    }
    return changes;
  }

  /**
   * Where the trials begin that stand side by side.
   *
   * @param trials how many are compared
   * @return the place of the first, from 0
   */
  static int firstBeside(int trials) {
    return Math.max(0, trials - BESIDE_UP_TO);
  }

  private static List<Noted> column(List<List<Noted>> noted, int label) {
    return noted.stream().map(trial -> trial.get(label)).toList();
  }

  private static Row differingRow(List<Noted> row) {
    double most = row.stream().mapToDouble(noted -> noted.size().orElse(0)).max().orElse(0);
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      Noted noted = row.get(i);
      cells.add(
          new Cell(
              noted.text(),
              "",
              i == 0 ? Changed.SAME : changed(row.get(i - 1), noted),
              noted.hasBar() && most > 0
                  ? CellFigure.bar(noted.size().orElse(0) / most)
                  : CellFigure.none()));
    }
    return new Row(row.get(0).label(), cells);
  }

  private static Changed changed(Noted before, Noted after) {
    if (before.text().equals(after.text())) {
      return Changed.SAME;
    }
    if (before.size().isEmpty() || after.size().isEmpty()) {
      return Changed.OTHER;
    }
    int order = Double.compare(after.size().getAsDouble(), before.size().getAsDouble());
    return order == 0 ? Changed.OTHER : order > 0 ? Changed.UP : Changed.DOWN;
  }

  private static List<Block> blocks(
      List<TrialForecast> trials, List<Row> differing, List<Row> forecast, List<Row> happened) {
    List<Block> blocks = new ArrayList<>();
    // Even pieces: nine trials are better read as five and four than as six and three.
    int beside = firstBeside(trials.size());
    int pieces = (trials.size() - beside + COLUMNS - 1) / COLUMNS;
    int columns = (trials.size() - beside + pieces - 1) / pieces;
    int apart = ComparisonPage.firstApart(trials.size());
    for (int from = beside; from < trials.size(); from += columns) {
      int to = Math.min(from + columns, trials.size());
      boolean drawn = to > apart;
      List<Head> heads = new ArrayList<>();
      for (int i = from; i < to; i++) {
        heads.add(new Head(i + 1, Anchor.ofTrial(i + 1), trials.get(i).trial().name(), i >= apart));
      }
      blocks.add(
          new Block(
              heads,
              cut(differing, from, to, drawn),
              cut(forecast, from, to, drawn),
              cut(happened, from, to, drawn)));
    }
    return blocks;
  }

  /** Some columns; hundreds of them go without drawings, which weigh more than the words. */
  private static List<Row> cut(List<Row> rows, int from, int to, boolean drawn) {
    return rows.stream()
        .map(
            row ->
                new Row(
                    row.label(),
                    row.cells().subList(from, to).stream()
                        .map(cell -> drawn ? cell : cell.withoutFigure())
                        .toList()))
        .toList();
  }
}
