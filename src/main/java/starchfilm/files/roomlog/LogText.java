package starchfilm.files.roomlog;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.FileText;
import starchfilm.files.json.UnreadableFileException;

/** The text of a room log; loggers write UTF-8, UTF-16 and Windows-1252, and all are read. */
public final class LogText {
  private static final long MAX_BYTES = 20_000_000;

  /**
   * How workbooks begin: as ZIP archives ({@code .xlsx, .ods}), or as compound files ({@code
   * .xls}).
   */
  private static final Set<Integer> WORKBOOKS = Set.of(0x504B0304, 0xD0CF11E0);

  private LogText() {}

  /** Reads a file; what had to be guessed is noticed. */
  public static String read(Path file, Findings findings) throws UnreadableFileException {
    return of(FileText.bytes(file, MAX_BYTES), findings);
  }

  /** The text of what was read or sent. */
  public static String of(byte[] bytes, Findings findings) throws UnreadableFileException {
    if (bytes.length == 0) {
      throw new UnreadableFileException(
          "an empty file", "a room log", "export the log again, or name another file");
    }
    if (bytes.length > 3 && WORKBOOKS.contains(ByteBuffer.wrap(bytes).getInt())) {
      throw new UnreadableFileException(
          "the workbook of a spreadsheet",
          "a table as text",
          "save it as CSV in the spreadsheet, and take that file");
    }
    if (FileText.looksLikeUtf16(bytes)) {
      // The charset reads the byte order mark; without one, loggers on PCs write the low byte
      // first.
      boolean marked = (bytes[0] & 0xFF) >= 0xFE;
      return new String(bytes, marked ? StandardCharsets.UTF_16 : StandardCharsets.UTF_16LE);
    }
    try {
      return FileText.utf8(bytes);
    } catch (UnreadableFileException e) {
      findings.notice("not UTF-8, read as Windows-1252");
      return new String(bytes, Charset.forName("windows-1252"));
    }
  }
}
