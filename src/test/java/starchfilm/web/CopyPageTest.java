package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import starchfilm.web.Served.Content;

class CopyPageTest {
  @Test
  void theCopyHoldsEveryFileOfTheFolderAndNothingElse(@Served(Content.GARDEN) RunningSite site)
      throws Exception {
    Files.writeString(site.folder().resolve(".hidden"), "mine");
    Path outside = Files.writeString(site.folder().resolveSibling("outside.json"), "secret");
    Files.createSymbolicLink(site.folder().resolve("link.json"), outside);

    Map<String, String> copied = unpacked(site);

    assertThat(copied.get("4-blend.json"))
        .isEqualTo(Files.readString(site.folder().resolve("4-blend.json")));
    assertThat(copied).containsKeys("workshop.json", "shed-april.csv");
    assertThat(copied).doesNotContainKeys(".hidden", "link.json");
  }

  private static Map<String, String> unpacked(RunningSite site)
      throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(site.uri("/copy")).build(),
                HttpResponse.BodyHandlers.ofByteArray());
    assertThat(answer.headers().firstValue("Content-Disposition").orElse("")).contains(".zip");
    Map<String, String> files = new TreeMap<>();
    try (InputStream bytes = new ByteArrayInputStream(answer.body());
        ZipInputStream zip = new ZipInputStream(bytes)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String name = entry.getName();
        files.put(
            name.substring(name.indexOf('/') + 1),
            new String(zip.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
      }
    }
    return files;
  }

  /** A note is written into a hidden file first, which is there for a moment only. */
  @Test
  void aNoteThatIsBeingWrittenSpoilsNoCopy(@Served(Content.GARDEN) RunningSite site)
      throws Exception {
    AtomicBoolean copied = new AtomicBoolean();
    Path scratch = site.folder().resolve(".scratch");
    CompletableFuture<Void> noting =
        CompletableFuture.runAsync(
            () -> {
              while (!copied.get()) {
                try {
                  Files.writeString(scratch, "a");
                  Files.delete(scratch);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              }
            });
    for (int i = 0; i < 300; i++) {
      assertThat(site.get("/copy").statusCode()).isEqualTo(200);
    }
    copied.set(true);
    noting.join();
  }
}
