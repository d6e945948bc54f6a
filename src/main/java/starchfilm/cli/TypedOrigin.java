package starchfilm.cli;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import starchfilm.files.notebook.FileWord;
import starchfilm.material.recipe.GlycerolOrigin;

/** The option {@code --origin}, alike in every command. */
final class TypedOrigin {
  static final String NAME = "--origin";

  static final String LABEL = "bought|recovered|unknown";

  static final String DESCRIPTION =
      "Where the glycerol comes from: bought with a label, recovered from oil, or unknown. Not"
          + " given: recovered if its salt is given, else unknown.";

  private TypedOrigin() {}

  static Optional<GlycerolOrigin> stated(@Nullable String typed) {
    return Optional.ofNullable(typed)
        .map(
            word ->
                NearName.find(NAME, word, Arrays.asList(GlycerolOrigin.values()), FileWord::of));
  }

  /**
   * The origin of a jar whose salt may have been given.
   *
   * @param typed what was typed, if anything
   * @param salt the salt as typed, if it was
   */
  static GlycerolOrigin of(@Nullable String typed, @Nullable String salt) {
    Optional<GlycerolOrigin> stated = stated(typed);
    boolean saltStated = salt != null && TypedAmounts.share("--salt", salt) > 0;
    if (saltStated && stated.equals(Optional.of(GlycerolOrigin.BOUGHT))) {
      throw CommandFailure.wrongInput(
          "--origin: bought given beside --salt "
              + salt
              + ", allowed recovered or unknown with salt; glycerol bought with a label holds none,"
              + " leave one out");
    }
    return GlycerolOrigin.of(stated, saltStated);
  }
}
