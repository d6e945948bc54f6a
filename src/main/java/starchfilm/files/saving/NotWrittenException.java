package starchfilm.files.saving;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import starchfilm.files.findings.Fault;

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

  /** A fault of the whole file. */
  static NotWrittenException because(Path file, String given, String mend) {
    return new NotWrittenException(
        List.of(
            new Fault(
                file.toString().replace('\\', '/'),
                OptionalInt.empty(),
                OptionalInt.empty(),
                "",
                given,
                "",
                mend)));
  }

  /**
   * What stands in the way.
   *
   * @return at least one fault
   */
  public List<Fault> faults() {
    return faults;
  }
}
