package starchfilm.files.notebook;

import java.util.List;
import java.util.stream.Stream;

/** An account that a trial file may give of the air of its room; of several the last one holds. */
public enum RoomAccount {
  /** The same air all the time. */
  AIR("air_C", "rh_pct"),
  /** Warm by day and cool by night. */
  SWING("swing"),
  /** A hygrometer's log. */
  LOG("log_csv");

  private final List<String> keys;

  RoomAccount(String... keys) {
    this.keys = List.of(keys);
  }

  /** The account that holds among those a room gives. */
  static RoomAccount of(ObjectReader room) {
    return Stream.of(values())
        .filter(account -> account.keys.stream().anyMatch(room::has))
        .reduce(AIR, (less, more) -> more);
  }

  /** The account's first field. */
  public String key() {
    return keys.get(0);
  }

  /** The fields of all other accounts. */
  public List<String> otherKeys() {
    return Stream.of(values())
        .filter(other -> other != this)
        .flatMap(other -> other.keys.stream())
        .toList();
  }

  /** The fields of the account's field, in its order; none where that is no section. */
  public List<TrialField> fields() {
    return List.copyOf(TrialField.TRIAL.field("room").field(key()).fields().values());
  }
}
