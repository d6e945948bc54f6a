import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Lays the licence of every library that is shipped into a folder of its name, beside the list of
 * all of them: the texts its jar holds, or that of Apache-2.0 where the jar holds none and the list
 * says it is under that.
 */
final class Licences {
  private static final String PAPER =
      "META-INF/([^/]*(LICENSE|NOTICE)[^/]*|resources/webjars/.*/LICENSE)";

  /** Arguments: the folder with the list, and the class path of the program. */
  public static void main(String[] words) throws IOException {
    Path folder = Path.of(words[0]);
    List<String> list = Files.readAllLines(folder.resolve("list.txt"));
    for (String part : words[1].split(File.pathSeparator)) {
      if (part.endsWith(".jar") && !hasLicence(Path.of(part), folder, list)) {
        System.err.println(
            part
                + " holds no licence, and list.txt does not say that it is under Apache-2.0:"
                + " find its text, and let Licences.java lay it beside the others");
        System.exit(1);
      }
    }
  }

  private static boolean hasLicence(Path jar, Path folder, List<String> list) throws IOException {
    // A repository's folders are artifact, version, jar.
    Path version = jar.getParent();
    Path artifact = version.getParent().getFileName();
    Path own = Files.createDirectories(folder.resolve(artifact));
    boolean found = false;
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : zip.stream().filter(e -> e.getName().matches(PAPER)).toList()) {
        Path paper = own.resolve(Path.of(entry.getName()).getFileName());
        try (InputStream text = zip.getInputStream(entry)) {
          Files.copy(text, paper, StandardCopyOption.REPLACE_EXISTING);
        }
        found |= paper.getFileName().toString().contains("LICENSE");
      }
    }
    String listed = ":" + artifact + ":" + version.getFileName() + " ";
    if (!found && list.stream().anyMatch(l -> l.contains("(Apache-2.0)") && l.contains(listed))) {
      Files.copy(Path.of("LICENSE"), own.resolve("LICENSE"), StandardCopyOption.REPLACE_EXISTING);
      found = true;
    }
    return found;
  }
}
