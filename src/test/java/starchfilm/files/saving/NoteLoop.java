package starchfilm.files.saving;

import java.nio.file.Path;

/** A program of its own for tests: adds numbered remarks to a trial file. */
final class NoteLoop {
  private NoteLoop() {}

  /**
   * Adds remarks.
   *
   * @param args the file, the writer's name, and how many remarks
   * @throws NotWrittenException if one could not be written
   */
  public static void main(String[] args) throws NotWrittenException {
    for (int i = 1; i <= Integer.parseInt(args[2]); i++) {
      NoteWriter.add(Path.of(args[0]), NoteWriterTest.remark(args[1] + " " + i));
      if (args[1].startsWith("round")) {
        System.out.println(i);
      }
    }
  }
}
