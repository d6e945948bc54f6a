package starchfilm.proof;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Programs in a process of their own, on the Java that runs the tests, quick to start. */
public final class OwnJava {
  private OwnJava() {}

  /**
   * A program that was packed.
   *
   * @param jar the jar
   * @param arguments the words behind it
   * @return what starts it
   */
  public static ProcessBuilder packed(Path jar, String... arguments) {
    return program(List.of("-jar", jar.toString()), arguments);
  }

  /**
   * A program among the classes that are being tested.
   *
   * @param mainClass the name of its class
   * @param arguments the words behind it
   * @return what starts it
   */
  public static ProcessBuilder of(String mainClass, String... arguments) {
    return program(List.of("-cp", System.getProperty("java.class.path"), mainClass), arguments);
  }

  /**
   * Where a tool of this Java is.
   *
   * @param name such as {@code java}
   * @return its path
   */
  public static String tool(String name) {
    return Path.of(System.getProperty("java.home"), "bin", name).toString();
  }

  private static ProcessBuilder program(List<String> what, String... arguments) {
    List<String> words =
        new ArrayList<>(List.of(tool("java"), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    words.addAll(what);
    words.addAll(List.of(arguments));
    return new ProcessBuilder(words);
  }
}
