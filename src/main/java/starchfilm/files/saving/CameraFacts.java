package starchfilm.files.saving;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What a camera wrote into a picture beside the picture: when it was taken, and where.
 *
 * <p>Source: Exif 2.3 (CIPA DC-008-2012), tags 0x8769, 0x9003 and 0x8825, in the APP1 segment of a
 * JPEG file (ITU-T T.81, annex B); PNG (ISO/IEC 15948), chunks eXIf, tEXt, zTXt and iTXt (both
 * recalled).
 */
final class CameraFacts {
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final DateTimeFormatter TAKEN =
      DateTimeFormatter.ofPattern("yyyy:MM:dd HH:mm:ss", Locale.ROOT);
  private static final int CAMERA_DIRECTORY = 0x8769;
  private static final int TAKEN_TAG = 0x9003;
  private static final int PLACE_DIRECTORY = 0x8825;
  private static final int TAKEN_LENGTH = 19;
  private static final int ENTRY_BYTES = 12;
  private static final int PNG_HEAD = 8;
  private static final int START_OF_SCAN = 0xDA;
  private static final int APP1 = 0xE1;

  /** The only other application segments that say nothing of a place: JFIF and colours. */
  private static final Set<Integer> HARMLESS = Set.of(0xE0, 0xE2, 0xEE);

  private static final Set<String> WORDS_OF_PNG = Set.of("eXIf", "tEXt", "zTXt", "iTXt");

  private CameraFacts() {}

  /** The picture without what says where it was taken; its pixels are as they were. */
  static byte[] withoutPlace(byte[] picture) {
    try {
      return switch (Picture.of(picture).orElse(Picture.GIF)) {
        case JPEG -> jpegWithoutPlace(picture);
        case PNG -> pngWithoutWords(picture);
        case GIF -> picture;
      };
    } catch (IndexOutOfBoundsException | BufferUnderflowException damaged) {
      // What cannot be taken apart holds nothing that others could read either.
      return picture;
    }
  }

  /** When it was taken, by the clock of the camera. */
  static Optional<LocalDateTime> takenAt(byte[] picture) {
    try {
      boolean isJpeg = Picture.of(picture).equals(Optional.of(Picture.JPEG));
      for (int at = 2; isJpeg && marker(picture, at) != START_OF_SCAN; ) {
        int end = at + 2 + length(picture, at);
        if (isExif(picture, at)) {
          return taken(tiff(picture, at, end));
        }
        at = end;
      }
    } catch (IndexOutOfBoundsException | BufferUnderflowException | DateTimeException none) {
      // A camera that writes nonsense is read as one that writes nothing.
    }
    return Optional.empty();
  }

  private static int marker(byte[] picture, int at) {
    if ((picture[at] & 0xFF) != 0xFF) {
      throw new IndexOutOfBoundsException("no marker");
    }
    return picture[at + 1] & 0xFF;
  }

  private static int length(byte[] picture, int at) {
    return (picture[at + 2] & 0xFF) << 8 | (picture[at + 3] & 0xFF);
  }

  private static boolean isExif(byte[] picture, int at) {
    return marker(picture, at) == APP1
        && Arrays.equals(EXIF, Arrays.copyOfRange(picture, at + 4, at + 4 + EXIF.length));
  }

  private static ByteBuffer tiff(byte[] picture, int at, int end) {
    int from = at + 4 + EXIF.length;
    ByteBuffer tiff = ByteBuffer.wrap(picture, from, end - from).slice();
    return tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
  }

  private static byte[] jpegWithoutPlace(byte[] picture) {
    byte[] copy = picture.clone();
    ByteArrayOutputStream out = new ByteArrayOutputStream(copy.length);
    out.write(copy, 0, 2);
    int at = 2;
    while (marker(copy, at) != START_OF_SCAN) {
      int end = at + 2 + length(copy, at);
      int marker = marker(copy, at);
      boolean ofApplication = marker >= 0xE0 && marker <= 0xEF;
      if (isExif(copy, at)) {
        erasePlace(tiff(copy, at, end));
        out.write(copy, at, end - at);
      } else if (!ofApplication || HARMLESS.contains(marker)) {
        out.write(copy, at, end - at);
      }
      at = end;
    }
    out.write(copy, at, copy.length - at);
    return out.toByteArray();
  }

  /** Overwrites the directory of the place and all it points to, and its entry. */
  private static void erasePlace(ByteBuffer tiff) {
    int first = tiff.getInt(4);
    int entry = entry(tiff, first, PLACE_DIRECTORY);
    if (entry < 0) {
      return;
    }
    int place = tiff.getInt(entry + 8);
    int entries = Short.toUnsignedInt(tiff.getShort(place));
    int[] bytesOf = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};
    for (int i = 0; i < entries; i++) {
      int one = place + 2 + i * ENTRY_BYTES;
      int kind = Short.toUnsignedInt(tiff.getShort(one + 2));
      long bytes = (kind < bytesOf.length ? bytesOf[kind] : 1) * (long) tiff.getInt(one + 4);
      if (bytes > 4) {
        erase(tiff, tiff.getInt(one + 8), (int) Math.min(bytes, tiff.capacity()));
      }
    }
    erase(tiff, place, 2 + entries * ENTRY_BYTES);
    tiff.putInt(entry + 4, 0);
    tiff.putInt(entry + 8, 0);
  }

  private static void erase(ByteBuffer tiff, int from, int bytes) {
    for (int i = Math.max(0, from); i < Math.min(tiff.capacity(), (long) from + bytes); i++) {
      tiff.put(i, (byte) 0);
    }
  }

  private static int entry(ByteBuffer tiff, int directory, int tag) {
    int entries = Short.toUnsignedInt(tiff.getShort(directory));
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + i * ENTRY_BYTES;
      if (Short.toUnsignedInt(tiff.getShort(entry)) == tag) {
        return entry;
      }
    }
    return -1;
  }

  private static Optional<LocalDateTime> taken(ByteBuffer tiff) {
    int camera = entry(tiff, tiff.getInt(4), CAMERA_DIRECTORY);
    int taken = camera < 0 ? -1 : entry(tiff, tiff.getInt(camera + 8), TAKEN_TAG);
    if (taken < 0) {
      return Optional.empty();
    }
    byte[] words = new byte[TAKEN_LENGTH];
    tiff.get(tiff.getInt(taken + 8), words);
    return Optional.of(LocalDateTime.parse(new String(words, StandardCharsets.US_ASCII), TAKEN));
  }

  private static byte[] pngWithoutWords(byte[] picture) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(picture.length);
    out.write(picture, 0, PNG_HEAD);
    ByteBuffer chunks = ByteBuffer.wrap(picture);
    int at = PNG_HEAD;
    while (at + 12 <= picture.length) {
      int length = chunks.getInt(at);
      String name = new String(picture, at + 4, 4, StandardCharsets.US_ASCII);
      if (length < 0 || length > picture.length) {
        throw new IndexOutOfBoundsException("a chunk longer than the picture");
      }
      int end = at + 12 + length;
      if (!WORDS_OF_PNG.contains(name)) {
        out.write(picture, at, end - at);
      }
      at = end;
    }
    return out.toByteArray();
  }
}
