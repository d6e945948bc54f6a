package starchfilm.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.filters.ImageFilter;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.ExifUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/**
 * A photo made small enough to travel inside a page.
 *
 * <p>The picture is turned the way the camera held it, scaled and encoded anew, so that nothing
 * else of the file (place, time, camera) goes with it.
 *
 * @param jpeg the picture; empty where it could not be read
 * @param words what is shown with it: the file's name, or why there is no picture
 */
public record PhotoFrame(Optional<byte[]> jpeg, String words) {
  private static final long MAX_BYTES = 60_000_000;
  private static final long MAX_PIXELS = 120_000_000;
  private static final int LONG_SIDE = 720;
  private static final float QUALITY = 0.82f;

  /**
   * A photo for a page.
   *
   * @param file the picture's file
   * @return the picture, or the sentence on why there is none
   */
  public static PhotoFrame of(Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > MAX_BYTES) {
        return missing(name, "is larger than " + MAX_BYTES / 1_000_000 + " MB");
      }
      return read(file)
          .map(jpeg -> new PhotoFrame(Optional.of(jpeg), name))
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

  /** The picture as a page carries it; empty where it could not be read. */
  public String dataUri() {
    return jpeg.map(bytes -> "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(bytes))
        .orElse("");
  }

  private static PhotoFrame missing(String name, String why) {
    return new PhotoFrame(Optional.empty(), name + " " + why + ".");
  }

  private static Optional<byte[]> read(Path file) throws IOException {
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
        // Only a camera's own format says how it was held.
        Orientation held =
            reader.getFormatName().equals("JPEG")
                ? ExifUtils.getExifOrientation(reader, 0)
                : Orientation.TOP_LEFT;
        return Optional.of(
            jpeg(onWhite(reader.read(0, reading)), ExifFilterUtils.getFilterForOrientation(held)));
      } finally {
        reader.dispose();
      }
    }
  }

  /** What shows through a picture is white. */
  private static BufferedImage onWhite(BufferedImage picture) {
    BufferedImage opaque =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = opaque.createGraphics();
    graphics.drawImage(picture, 0, 0, Color.WHITE, null);
    graphics.dispose();
    return opaque;
  }

  private static byte[] jpeg(BufferedImage picture, ImageFilter upright) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Thumbnails.of(picture)
        .scale(Math.min(1, (double) LONG_SIDE / Math.max(picture.getWidth(), picture.getHeight())))
        .addFilter(upright)
        .outputFormat("jpg")
        .outputQuality(QUALITY)
        .toOutputStream(bytes);
    return bytes.toByteArray();
  }
}
