package starchfilm.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * A photo made small enough to travel inside a page.
 *
 * <p>The picture is turned the way the camera held it, scaled and encoded anew, so that nothing
 * else of the file (place, time, camera) goes with it.
 *
 * @param dataUri the picture; empty where it could not be read
 * @param words what is shown with it: the file's name, or why there is no picture
 */
record PhotoFrame(String dataUri, String words) {
  private static final long MAX_BYTES = 60_000_000;
  private static final long MAX_PIXELS = 120_000_000;
  private static final int LONG_SIDE = 720;
  private static final float QUALITY = 0.82f;

  /**
   * A photo for a page.
   *
   * @return the picture, or the sentence on why there is none
   */
  static PhotoFrame of(Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > MAX_BYTES) {
        return missing(name, "is larger than " + MAX_BYTES / 1_000_000 + " MB");
      }
      return read(file)
          .map(picture -> new PhotoFrame("data:image/jpeg;base64," + jpeg(picture), name))
          .orElseGet(
              () ->
                  missing(
                      name,
                      "cannot be read as a picture (a phone's own format?), or has too many"
                          + " pixels; save it as JPEG"));
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException unreadable) {
      // Damaged pictures make the decoders throw all of these.
      return missing(name, "is damaged, or its permissions do not allow reading it");
    }
  }

  /** The picture itself; empty where it could not be read. */
  Optional<byte[]> jpeg() {
    return dataUri.isEmpty()
        ? Optional.empty()
        : Optional.of(Base64.getDecoder().decode(dataUri.substring(dataUri.indexOf(',') + 1)));
  }

  private static PhotoFrame missing(String name, String why) {
    return new PhotoFrame("", name + " " + why + ".");
  }

  private static Optional<BufferedImage> read(Path file) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return Optional.empty();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MAX_PIXELS) {
          return Optional.empty();
        }
        // Read no more pixels than twice what is shown: a camera's picture is forty times that.
        int step = Math.max(1, Math.max(width, height) / (2 * LONG_SIDE));
        ImageReadParam reading = reader.getDefaultReadParam();
        reading.setSourceSubsampling(step, step, 0, 0);
        return Optional.of(
            upright(reader.read(0, reading), CameraTurn.of(reader.getImageMetadata(0))));
      } finally {
        reader.dispose();
      }
    }
  }

  private static BufferedImage upright(BufferedImage picture, CameraTurn turn) {
    double scale =
        Math.min(1, (double) LONG_SIDE / Math.max(picture.getWidth(), picture.getHeight()));
    int width = Math.max(1, (int) Math.round(scale * picture.getWidth()));
    int height = Math.max(1, (int) Math.round(scale * picture.getHeight()));
    BufferedImage small =
        new BufferedImage(
            turn.swapsSides() ? height : width,
            turn.swapsSides() ? width : height,
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = small.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, small.getWidth(), small.getHeight());
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    AffineTransform place = turn.upright(width, height);
    place.scale((double) width / picture.getWidth(), (double) height / picture.getHeight());
    graphics.drawImage(picture, place, null);
    graphics.dispose();
    return small;
  }

  private static String jpeg(BufferedImage picture) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam writing = writer.getDefaultWriteParam();
      writing.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      writing.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(picture, null, null), writing);
    } catch (IOException impossible) {
      throw new IllegalStateException("a picture in memory cannot fail", impossible);
    } finally {
      writer.dispose();
    }
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }
}
