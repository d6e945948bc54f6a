package starchfilm.files.saving;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.UnreadableFileException;

/** Nothing was written, and why; the file is as it was. */
public sealed class NotWrittenException extends Exception permits PlateDoubtException {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * Refused for these faults.
   *
   * @param faults what stands in the way; at least one
   */
  public NotWrittenException(List<Fault> faults) {
    super(faults.stream().map(Fault::sentence).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  NotWrittenException(Fault fault) {
    this(List.of(fault));
  }

  /** A fault of the whole file. */
  static NotWrittenException because(Path file, String given, String mend) {
    return new NotWrittenException(Fault.of(PlainLine.of(file), "", given, "", mend));
  }

  /** A file that cannot be read. */
  static NotWrittenException because(Path file, UnreadableFileException e) {
    return because(file, e.given(), e.mend());
  }

  /** What the system said. */
  static NotWrittenException because(Path file, Exception e) {
    WriteFailure why = WriteFailure.of(e);
    return because(file, why.given(), why.mend());
  }

  /**
   * Returns what stands in the way.
   *
   * @return at least one fault
   */
  public List<Fault> faults() {
    return faults;
  }
}
