package starchfilm.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
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
    } catch (IOException e) {
      String which =
          e instanceof FileSystemException named && named.getFile() != null
              ? folder.name(Path.of(named.getFile()))
              : "a file of the folder";
      throw new HttpError(
          500, "The copy could not be made: " + which + " cannot be read. Try again.");
    }
  }

  /** Plain files alone: a link may lead out of the folder. */
  private static List<Path> files(NotebookFolder folder) throws IOException {
    List<Path> files = new ArrayList<>();
    Files.walkFileTree(
        folder.root(),
        Set.of(),
        DEEPEST,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
            if (is.isRegularFile() && !NotebookFolder.isHidden(folder.name(file))) {
              files.add(file);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path file, IOException why) throws IOException {
            // What a note is written into first is there for a moment only.
            if (NotebookFolder.isHidden(folder.name(file))) {
              return FileVisitResult.CONTINUE;
            }
            throw why;
          }
        });
    Collections.sort(files);
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
