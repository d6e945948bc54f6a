package starchfilm.files.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.IntStream;

/** The text of a file: limited in size, UTF-8, without its byte order mark. */
public final class FileText {
  private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
  private static final Set<Short> UTF16_MARKS = Set.of((short) 0xFEFF, (short) 0xFFFE);
  private static final int LOOK_BYTES = 64;

  private FileText() {}

  /**
   * The bytes of a file, if they are not too many; a larger file is refused without reading it.
   *
   * @param file the file
   * @param limitBytes the most that is read
   * @return its bytes
   * @throws UnreadableFileException where there is no such file, it is no plain file, it is too
   *     large, or the system refuses to read it
   */
  public static byte[] bytes(Path file, long limitBytes) throws UnreadableFileException {
    if (!Files.exists(file)) {
      throw new UnreadableFileException("there is no such file", "", "check its name and folder");
    }
    if (!Files.isRegularFile(file) || isOfTheSystem(file)) {
      throw new UnreadableFileException(
          Files.isDirectory(file) ? "a folder" : "something that is neither file nor folder",
          "a file",
          "name a file, or rename or move what is called so");
    }
    try {
      if (Files.size(file) > limitBytes) {
        throw tooLarge(Files.size(file), limitBytes);
      }
      try (InputStream in = Files.newInputStream(file)) {
        // One byte more than allowed: the file may grow between the two looks.
        byte[] bytes = in.readNBytes((int) limitBytes + 1);
        if (bytes.length > limitBytes) {
          throw tooLarge(bytes.length, limitBytes);
        }
        return bytes;
      }
    } catch (AccessDeniedException e) {
      throw new UnreadableFileException(
          "a file without permission to read it", "", "check its permissions");
    } catch (IOException e) {
      throw new UnreadableFileException(
          "the system could not read the file", "", "check the disk and try again");
    }
  }

  /** A file that the system makes up while it is read may never end. */
  private static boolean isOfTheSystem(Path file) {
    try {
      return Files.getFileStore(file).type().equals("proc");
    } catch (IOException unknown) {
      // Whoever reads the file is told why it cannot be read.
      return false;
    }
  }

  private static UnreadableFileException tooLarge(long bytes, long limitBytes) {
    return new UnreadableFileException(
        megabytes(bytes) + " MB",
        "at most " + megabytes(limitBytes) + " MB",
        "check that this is the right file; photos belong beside it, not in it");
  }

  private static String megabytes(long bytes) {
    return Long.toString(Math.max(1, Math.round(bytes / 1e6)));
  }

  /**
   * Reads bytes as UTF-8; a byte order mark is skipped.
   *
   * @param bytes the file's bytes
   * @return its text
   * @throws UnreadableFileException where they are another encoding
   */
  public static String utf8(byte[] bytes) throws UnreadableFileException {
    if (looksLikeUtf16(bytes)) {
      throw new UnreadableFileException(
          "text in UTF-16", "text in UTF-8", "save the file again with the encoding UTF-8");
    }
    int start = hasUtf8Mark(bytes) ? UTF8_MARK.length : 0;
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
    CharBuffer out = CharBuffer.allocate(in.remaining() + 1);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    out.flip();
    if (result.isError()) {
      throw otherEncoding(bytes[in.position()], out.toString());
    }
    return out.toString();
  }

  private static UnreadableFileException otherEncoding(byte wrong, String before) {
    String asLatin1 = new String(new byte[] {wrong}, StandardCharsets.ISO_8859_1);
    String shown = Character.isLetter(asLatin1.charAt(0)) ? " (in Latin-1: " + asLatin1 + ")" : "";
    return new UnreadableFileException(
        Located.Place.after(before),
        String.format(java.util.Locale.ROOT, "the byte %02X%s", wrong & 0xFF, shown),
        "text in UTF-8",
        "save the file again with the encoding UTF-8");
  }

  /** The byte order mark that bytes begin with, as text; empty where they do not. */
  public static String mark(byte[] bytes) {
    return hasUtf8Mark(bytes) ? "\uFEFF" : "";
  }

  private static boolean hasUtf8Mark(byte[] bytes) {
    return bytes.length >= UTF8_MARK.length
        && Arrays.equals(bytes, 0, UTF8_MARK.length, UTF8_MARK, 0, UTF8_MARK.length);
  }

  /**
   * Says whether the bytes look like UTF-16: its byte order mark, or every other byte zero.
   *
   * @param bytes the bytes
   * @return true if so
   */
  public static boolean looksLikeUtf16(byte[] bytes) {
    if (bytes.length >= 2 && UTF16_MARKS.contains(ByteBuffer.wrap(bytes).getShort())) {
      return true;
    }
    int look = Math.min(bytes.length, LOOK_BYTES);
    long zeros = IntStream.range(0, look).filter(i -> bytes[i] == 0).count();
    return look >= 4 && zeros * 5L >= look * 2L;
  }
}
