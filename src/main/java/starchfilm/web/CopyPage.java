package starchfilm.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
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
      return Response.passing("application/zip", zipped(name, folder, files(folder)))
          .asFile(name + ".zip");
    } catch (IOException | UncheckedIOException e) {
      throw new HttpError(
          500, "The copy could not be made: a file of the folder cannot be read. Try again.");
    }
  }

  /** Plain files alone: a link may lead out of the folder. */
  private static List<Path> files(NotebookFolder folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder.root(), DEEPEST)) {
      files =
          all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
              .filter(file -> !NotebookFolder.isHidden(folder.name(file)))
              .sorted()
              .toList();
    }
    long bytes = files.stream().mapToLong(file -> file.toFile().length()).sum();
    if (bytes > MOST_BYTES) {
      throw new HttpError(
          413,
          "The folder holds %s MB, more than the 200 MB that are copied here; copy the folder itself: %s"
              .formatted(bytes / 1_000_000, folder.root()));
    }
    return files;
  }

  private static byte[] zipped(String name, NotebookFolder folder, List<Path> files)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Path file : files) {
        ZipEntry entry = new ZipEntry(name + "/" + folder.name(file));
        entry.setLastModifiedTime(Files.getLastModifiedTime(file));
        zip.putNextEntry(entry);
        Files.copy(file, zip);
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
