package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.web.Served.Content;

/**
 * The pictures in the guides show pages as they are served. With {@code -Dguides.rewrite=true} they
 * are taken anew, and the forecasts then rest on as many cases as a user's.
 */
@ExtendWith(Chrome.class)
class GuidePicturesInBrowserTest {
  private static final Path DOCS = Path.of("src/docs");
  private static final int WIDTH_PX = 1000;
  private static final int COLOURS = 120;

  enum GuidePicture {
    TODAY_PAGE("guide.md", "/today", "20 April 2026", 545),
    TRIAL_PAGE("guide.md", "/trial/forecast?file=" + DryingTrial.FILE, "On the shelf", 900),
    SHEET_PAGE("guide.md", "/trial/sheet?file=" + DryingTrial.FILE, "Weigh out", 1000),
    LEARNT_PAGE("guide.md", "/learnt", "taught", 720),
    COMPARISON_PAGE("../../README.md", "/compare/page?" + GARDEN, "side by side", 1000);

    final String guide;
    final String path;
    final String says;
    final int heightPx;

    GuidePicture(String guide, String path, String says, int heightPx) {
      this.guide = guide;
      this.path = path;
      this.says = says;
      this.heightPx = heightPx;
    }

    String file() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-') + ".png";
    }
  }

  private static final String GARDEN =
      "trial=1-thick-tray.json&trial=2-little-glycerol.json&trial=3-much-glycerol.json"
          + "&trial=4-blend.json&trial=5-blend-in-the-shed.json&trial=6-thin-by-the-fan.json";

  @ParameterizedTest
  @EnumSource(GuidePicture.class)
  void showsAPageThatIsServed(
      GuidePicture picture,
      Window window,
      @Served({Content.GARDEN, Content.DRYING}) RunningSite site)
      throws IOException {
    window.open(site, picture.path);
    window.awaitText(picture.says);
    window.awaitGone("progress, .pending");
    if (Boolean.getBoolean("guides.rewrite")) {
      ImageIO.write(
          fewColours(scaled(window.view(picture.heightPx))),
          "png",
          DOCS.resolve(picture.file()).toFile());
    }

    assertThat(Files.readString(DOCS.resolve(picture.guide)))
        .containsPattern("!\\[[^]]+]\\((?:src/docs/)?" + picture.file() + "\\)");
    assertThat(ImageIO.read(DOCS.resolve(picture.file()).toFile()).getWidth()).isEqualTo(WIDTH_PX);
  }

  private static BufferedImage scaled(BufferedImage view) {
    int height = Math.round((float) view.getHeight() * WIDTH_PX / view.getWidth());
    BufferedImage scaled = new BufferedImage(WIDTH_PX, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = scaled.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(view, 0, 0, WIDTH_PX, height, null);
    pen.dispose();
    return scaled;
  }

  /** A page has few colours; keeping the most frequent of each shade makes a small file. */
  private static BufferedImage fewColours(BufferedImage image) {
    Map<Integer, Integer> counts = new HashMap<>();
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    for (int rgb : pixels) {
      counts.merge(rgb, 1, Integer::sum);
    }
    Set<Integer> shades = new HashSet<>();
    int[] palette =
        counts.entrySet().stream()
            .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
            .map(Map.Entry::getKey)
            .filter(rgb -> shades.add(rgb & 0xf0f0f0))
            .limit(COLOURS)
            .mapToInt(rgb -> rgb)
            .toArray();
    IndexColorModel colours =
        new IndexColorModel(8, palette.length, palette, 0, false, -1, DataBuffer.TYPE_BYTE);
    BufferedImage few =
        new BufferedImage(
            image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, colours);
    few.setRGB(0, 0, image.getWidth(), image.getHeight(), pixels, 0, image.getWidth());
    return few;
  }
}
