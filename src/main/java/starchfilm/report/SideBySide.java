package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.Anchor;

/**
 * The head table: what the trials share, said once, and what differs, side by side.
 *
 * @param same what is the same in every trial; everything, where there is only one trial
 * @param sections what was done, what is expected and what came of it, as far as there is any
 * @param more amounts and further figures
 * @param blocks the trials, a few columns at a time
 */
record SideBySide(
    List<ComparedAttribute> same, List<Section> sections, Section more, List<Block> blocks) {
  /** Columns that fit an A4 page. */
  static final int COLUMNS = 6;

  /**
   * Up to this many trials stand side by side, of more only the last: a page of more opens slowly.
   */
  private static final int BESIDE_UP_TO = 1_000;

  /**
   * The head of a column.
   *
   * @param anchor where its own part of the page is
   * @param link where its name leads; empty where nowhere
   * @param base the page that holds the others against this one; empty where there is none
   * @param from which trial it was made from, in words; may be empty
   */
  record Head(
      int number,
      String anchor,
      String name,
      String link,
      String base,
      boolean isBase,
      String from) {
    /**
     * Returns whether the column is where the page shows the trial.
     *
     * @return false where another part of the page does
     */
    public boolean isPlace() {
      return !link.startsWith("#");
    }
  }

  /**
   * Rows under one heading.
   *
   * @param look class of the rows
   */
  record Section(String heading, String look, List<ComparedRow> rows) {}

  /**
   * Some trials side by side.
   *
   * @param drawn whether figures stand in the cells; those of hundreds weigh more than the words
   */
  record Block(List<Head> heads, boolean drawn) {
    /** Its columns of a row. */
    public List<ComparedCell> cells(ComparedRow row) {
      return row.cells().subList(first() - 1, last());
    }

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

  /** A row. */
  record ComparedRow(String label, List<ComparedCell> cells) {}

  /**
   * A cell.
   *
   * @param small a second, smaller line, such as a range; may be empty
   * @param changed true where it is not as in the trial the others are held against
   * @param bar width of a bar below the text, such as {@code 40%}; empty for none
   * @param strip a range on the row's scale below the text, if any
   */
  record ComparedCell(
      String text, String small, boolean changed, String bar, Optional<Strip> strip) {
    static ComparedCell of(String text) {
      return new ComparedCell(text, "", false, "", Optional.empty());
    }

    static ComparedCell drawn(String text, String small, Strip strip) {
      return new ComparedCell(text, small, false, "", Optional.of(strip));
    }
  }

  /**
   * Lays trials side by side.
   *
   * @param trials in the order they are shown; at least one
   */
  static SideBySide of(List<TrialForecast> trials, Around around) {
    List<List<ComparedAttribute>> noted = trials.stream().map(ComparedAttribute::of).toList();
    ComparedRows compared = new ComparedRows(trials);
    List<ComparedAttribute> same = new ArrayList<>();
    List<ComparedRow> differing = new ArrayList<>();
    List<ComparedRow> more = new ArrayList<>();
    for (int label = 0; label < noted.get(0).size(); label++) {
      List<ComparedAttribute> row = column(noted, label);
      if (row.stream().map(ComparedAttribute::text).distinct().count() == 1) {
        same.add(row.get(0));
      } else {
        (row.get(0).decides() ? differing : more).add(differingRow(row, around.base()));
      }
    }
    more.addAll(compared.further());
    List<Section> sections =
        Stream.of(
                new Section("Done differently", "done", differing),
                new Section("Expected", "expected", compared.expected()),
                new Section("What came of it", "happened", compared.happened()))
            .filter(section -> !section.rows().isEmpty())
            .toList();
    return new SideBySide(same, sections, new Section("", "done", more), blocks(trials, around));
  }

  /**
   * The changes from one trial to the next of what decides the film.
   *
   * @return such as {@code wet thickness 3.2 → 2.4 mm}, in the order of the table
   */
  static List<String> changes(TrialForecast before, TrialForecast after) {
    List<ComparedAttribute> was = ComparedAttribute.of(before);
    List<ComparedAttribute> is = ComparedAttribute.of(after);
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
   * @return the place of the first, from 0
   */
  static int firstBeside(int trials) {
    return Math.max(0, trials - BESIDE_UP_TO);
  }

  private static List<ComparedAttribute> column(List<List<ComparedAttribute>> noted, int label) {
    return noted.stream().map(trial -> trial.get(label)).toList();
  }

  private static ComparedRow differingRow(List<ComparedAttribute> row, int base) {
    double most =
        row.stream().mapToDouble(ComparedAttribute::bar).filter(bar -> bar > 0).max().orElse(0);
    List<ComparedCell> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      ComparedAttribute noted = row.get(i);
      cells.add(
          new ComparedCell(
              noted.text(),
              "",
              !noted.text().equals(row.get(base).text()),
              noted.bar() >= 0 && most > 0
                  ? Scale.linear(0, most, 0, 100).place(noted.bar()) + "%"
                  : "",
              Optional.empty()));
    }
    return new ComparedRow(row.get(0).label(), cells);
  }

  private static List<Block> blocks(List<TrialForecast> trials, Around around) {
    List<Block> blocks = new ArrayList<>();
    // Even pieces: nine trials are better read as five and four than as six and three.
    int beside = firstBeside(trials.size());
    int pieces = (trials.size() - beside + COLUMNS - 1) / COLUMNS;
    int columns = (trials.size() - beside + pieces - 1) / pieces;
    int apart = ComparisonPage.firstApart(trials.size());
    for (int from = beside; from < trials.size(); from += columns) {
      int to = Math.min(from + columns, trials.size());
      List<Head> heads = new ArrayList<>();
      for (int i = from; i < to; i++) {
        String address = around.address(i);
        heads.add(
            new Head(
                i + 1,
                Anchor.ofTrial(i + 1),
                trials.get(i).trial().name(),
                address.isEmpty() && i >= apart ? "#" + Anchor.ofTrial(i + 1) : address,
                around.baseAddress(i),
                i == around.base() && trials.size() > 1,
                from(trials, i)));
      }
      blocks.add(new Block(heads, to > apart));
    }
    return blocks;
  }

  /** Which of the trials it was made from; empty where it is none of them. */
  private static String from(List<TrialForecast> trials, int index) {
    Trial trial = trials.get(index).trial();
    return IntStream.range(0, trials.size())
        .filter(other -> trial.isMadeFrom(trials.get(other).trial()))
        .mapToObj(other -> "made from " + (other + 1))
        .findFirst()
        .orElse("");
  }
}
