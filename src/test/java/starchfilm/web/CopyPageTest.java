package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
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
}
