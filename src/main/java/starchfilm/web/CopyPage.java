package starchfilm.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>Save a copy</em>: the whole folder as one file, which another machine unpacks and opens. */
record CopyPage(PageContext desk) {
  private static final int DEEPEST = 8;

  /** A larger folder is copied faster by hand, and would not fit the memory. */
  private static final long MOST_BYTES = 200_000_000;

  void addTo(Routes table) {
    table.read("/copy", this::copy);
  }

  private Response copy(Request request) {
    NotebookFolder folder = desk.folder();
    folder.requireThere();
    String name = "starchfilm-" + desk.now().toLocalDate();
    try {
      return Response.passing("application/zip", zipped(name, folder, files(folder.root())))
          .with("Content-Disposition", "attachment; filename=\"" + name + ".zip\"");
    } catch (IOException | UncheckedIOException e) {
      throw new HttpError(
          500, "The copy could not be made: a file of the folder cannot be read. Try again.");
    }
  }

  /** Plain files alone: a link may lead out of the folder. */
  private static List<Path> files(Path root) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(root, DEEPEST)) {
      files =
          all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
              .filter(file -> !isHidden(root.relativize(file)))
              .sorted()
              .toList();
    }
    long bytes = 0;
    for (Path file : files) {
      bytes += Files.size(file);
    }
    if (bytes > MOST_BYTES) {
      throw new HttpError(
          413,
          "The folder holds %s MB, more than the 200 MB that are copied here; copy the folder itself: %s"
              .formatted(bytes / 1_000_000, root));
    }
    return files;
  }

  private static boolean isHidden(Path file) {
    for (Path part : file) {
      if (part.toString().startsWith(".")) {
        return true;
      }
    }
    return false;
  }

  private static byte[] zipped(String name, NotebookFolder folder, List<Path> files)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Path file : files) {
        ZipEntry entry = new ZipEntry(name + "/" + folder.name(file));
        FileTime changed = Files.getLastModifiedTime(file);
        entry.setLastModifiedTime(changed);
        zip.putNextEntry(entry);
        Files.copy(file, zip);
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
