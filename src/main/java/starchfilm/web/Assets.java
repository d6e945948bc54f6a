package starchfilm.web;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import starchfilm.files.json.PackedText;
import starchfilm.report.PageRenderer;
import starchfilm.web.http.Fingerprint;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/**
 * The files every page loads: one style sheet, one script, one icon. Their addresses carry a
 * fingerprint of their content, so a browser keeps them until they change.
 */
record Assets(Asset style, Asset script, Asset icon) {
  private static final String SCRIPT_POM =
      "/META-INF/maven/org.webjars.npm/htmx.org/pom.properties";
  private static final String ICON =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 32 32\"><rect y=\"24\" width=\"32\""
          + " height=\"4\" fill=\"#8b9391\"/><path d=\"M0 8H32V22C22 22 12 23 0 24Z\""
          + " fill=\"#0f5a63\"/></svg>";

  /**
   * A file.
   *
   * @param address its path
   */
  @SuppressWarnings("ArrayRecordComponent") // written once, never compared
  record Asset(String address, String type, byte[] bytes) {
    private static Asset of(String name, String ending, String type, String text) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return new Asset("/" + name + "-" + fingerprint(bytes) + ending, type, bytes);
    }
  }

  /**
   * Loads them from the program itself.
   *
   * @param renderer fills the template that holds the report's style sheet
   */
  static Assets load(PageRenderer renderer) {
    return new Assets(
        Asset.of("look", ".css", "text/css; charset=utf-8", sheet(renderer)),
        Asset.of("script", ".js", "text/javascript; charset=utf-8", library()),
        Asset.of("icon", ".svg", "image/svg+xml", ICON));
  }

  /** Adds their addresses to a table of routes. */
  void addTo(Routes table) {
    for (Asset asset : new Asset[] {style, script, icon}) {
      table.read(asset.address(), request -> Response.lasting(asset.type(), asset.bytes()));
    }
  }

  /** The report's sheet and what pages with forms need beside it: one visual language. */
  private static String sheet(PageRenderer renderer) {
    return Documents.style(renderer.render("style", Map.of()))
        + PackedText.of(Assets.class, "/templates/web/look.css");
  }

  private static String library() {
    Properties pom = new Properties();
    try {
      pom.load(new StringReader(PackedText.of(Assets.class, SCRIPT_POM)));
    } catch (IOException e) {
      throw new UncheckedIOException(SCRIPT_POM, e);
    }
    return PackedText.of(
        Assets.class,
        "/META-INF/resources/webjars/htmx.org/" + pom.getProperty("version") + "/dist/htmx.min.js");
  }

  private static String fingerprint(byte[] bytes) {
    return HexFormat.of().formatHex(Fingerprint.of(List.of(bytes)), 0, 6);
  }
}
