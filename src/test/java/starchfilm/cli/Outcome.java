package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;

/** What came of one command, held against what every command promises. */
record Outcome(int exit, String out, String err) {
  static Outcome of(Path folder, String... words) {
    return of(new Terminal(folder), words);
  }

  static Outcome of(Terminal terminal, String... words) {
    int exit = terminal.run(words);
    Outcome outcome = new Outcome(exit, terminal.out(), terminal.err());
    String typed = String.join(" ", words).replaceAll("\\s+|\\p{Cntrl}", " ");
    outcome.isInOrder(typed.substring(0, Math.min(200, typed.length())));
    return outcome;
  }

  private void isInOrder(String typed) {
    assertThat(exit).as(typed).isBetween(0, 2);
    assertThat(err)
        .as(typed)
        .doesNotContain("the program itself", "\tat ", "Exception", "com.fasterxml", "java.")
        .doesNotContainPattern("(?m)^\\s*$");
    assertThat(exit == 0 || !err.isBlank()).as("%s: exit %d says why", typed, exit).isTrue();
    assertThat(out.contains("\tat ")).as(typed).isFalse();
  }
}
