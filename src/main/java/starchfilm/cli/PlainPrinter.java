package starchfilm.cli;

import java.io.PrintWriter;
import java.util.regex.Pattern;
import starchfilm.files.findings.PlainLine;

/**
 * Where everything the program says goes out. A file's or a user's words in it cannot command the
 * terminal: in place of a control character stands U+FFFD.
 */
final class PlainPrinter extends PrintWriter {
  private static final String IN_PLACE = "\uFFFD";

  /** Line ends and tabs are let through. */
  private static final Pattern COMMAND =
      Pattern.compile("\r(?!\n)|[" + PlainLine.COMMANDS + "&&[^\t\r\n]]");

  private final PrintWriter end;

  /**
   * Prints what is plain.
   *
   * @param out where it goes
   */
  PlainPrinter(PrintWriter out) {
    super(out, true);
    this.end = out;
  }

  /** Prints a result as it is, such as a page or a table that another program will read. */
  void printResult(String text) {
    end.write(text);
    end.flush();
  }

  /** Prints sentences, each broken into lines below its own beginning. */
  void printSentences(Iterable<String> sentences) {
    for (String sentence : sentences) {
      String indent = sentence.substring(0, sentence.length() - sentence.stripLeading().length());
      Paragraph.of(sentence.strip(), indent, indent + "  ").forEach(this::println);
    }
  }

  @Override
  public void write(int c) {
    write(String.valueOf((char) c), 0, 1);
  }

  @Override
  public void write(char[] buffer, int offset, int length) {
    write(String.valueOf(buffer, offset, length), 0, length);
  }

  @Override
  public void write(String text, int offset, int length) {
    String plain = COMMAND.matcher(text.substring(offset, offset + length)).replaceAll(IN_PLACE);
    super.write(plain, 0, plain.length());
  }

  /** Whether nothing was lost on the way: the disk may be full, or the reader gone. */
  boolean arrived() {
    return !end.checkError();
  }
}
