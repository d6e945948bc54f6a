package starchfilm.files.saving;

import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.notebook.TrialField;

/** A trial to be poured, made from another: the same recipe, pour and room, and no history. */
public final class FreshTrial {
  private FreshTrial() {}

  /**
   * The fields of a trial to be poured again.
   *
   * @param trial the fields of another
   * @return the same without its history
   */
  public static ObjectValue of(ObjectValue trial) {
    return trial.without(
        TrialField.TRIAL.all().stream()
            .filter(TrialField::perPour)
            .map(TrialField::path)
            .toArray(String[]::new));
  }
}
