package starchfilm.report;

import java.awt.geom.AffineTransform;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.NodeList;

/**
 * How a camera was held: what its picture needs to stand upright.
 *
 * <p>Source: Exif 2.3 (CIPA DC-008-2012), tag 274 "Orientation", values 1 to 8, in the APP1 segment
 * of a JPEG file (recalled).
 *
 * @param orientation the tag's value, 1 where there is none
 */
record CameraTurn(int orientation) {
  private static final String JPEG_TREE = "javax_imageio_jpeg_image_1.0";
  private static final String APP1 = "225";
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final int ORIENTATION_TAG = 274;
  private static final int ENTRY_BYTES = 12;
  private static final CameraTurn NONE = new CameraTurn(1);

  /**
   * Finds how the camera was held.
   *
   * @param metadata what a picture says of itself; null for some formats
   * @return the turn, or none where nothing is said
   */
  static CameraTurn of(@Nullable IIOMetadata metadata) {
    if (metadata == null || !JPEG_TREE.equals(metadata.getNativeMetadataFormatName())) {
      return NONE;
    }
    IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(JPEG_TREE);
    NodeList segments = root.getElementsByTagName("unknown");
    for (int i = 0; i < segments.getLength(); i++) {
      IIOMetadataNode segment = (IIOMetadataNode) segments.item(i);
      if (APP1.equals(segment.getAttribute("MarkerTag"))
          && segment.getUserObject() instanceof byte[] bytes
          && Arrays.equals(EXIF, Arrays.copyOf(bytes, EXIF.length))) {
        return of(ByteBuffer.wrap(bytes, EXIF.length, bytes.length - EXIF.length).slice());
      }
    }
    return NONE;
  }

  /** Looks the tag up in the first directory of a TIFF structure. */
  private static CameraTurn of(ByteBuffer tiff) {
    try {
      tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      int directory = tiff.getInt(4);
      int entries = Short.toUnsignedInt(tiff.getShort(directory));
      for (int i = 0; i < entries; i++) {
        int entry = directory + 2 + i * ENTRY_BYTES;
        if (Short.toUnsignedInt(tiff.getShort(entry)) == ORIENTATION_TAG) {
          int value = Short.toUnsignedInt(tiff.getShort(entry + 8));
          return value >= 1 && value <= 8 ? new CameraTurn(value) : NONE;
        }
      }
      return NONE;
    } catch (IndexOutOfBoundsException | BufferUnderflowException damaged) {
      // A camera that writes nonsense is read as one that writes nothing.
      return NONE;
    }
  }

  /** Whether height becomes width. */
  boolean swapsSides() {
    return orientation >= 5;
  }

  /**
   * The move that stands a picture upright.
   *
   * @return from places in the stored picture to places in the upright one
   */
  AffineTransform upright(double width, double height) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }
}
