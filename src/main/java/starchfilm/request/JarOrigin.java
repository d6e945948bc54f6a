package starchfilm.request;

import java.util.List;
import java.util.Optional;
import starchfilm.files.amount.KnownName;
import starchfilm.files.notebook.FileWord;
import starchfilm.material.recipe.GlycerolOrigin;

/** Where a jar's glycerol comes from, asked alike wherever a jar is meant. */
final class JarOrigin {
  static final Field ORIGIN = Field.of("jar.origin");

  private JarOrigin() {}

  static Optional<GlycerolOrigin> stated(EntryReader in) {
    return in.one(
        ORIGIN,
        typed ->
            KnownName.find(
                typed, List.of(GlycerolOrigin.values()), one -> List.of(FileWord.of(one))));
  }

  /** The origin of a jar whose salt may have been written. */
  static GlycerolOrigin of(EntryReader in, Field salt, double saltFraction) {
    Optional<GlycerolOrigin> stated = stated(in);
    if (saltFraction > 0 && stated.equals(Optional.of(GlycerolOrigin.BOUGHT))) {
      in.refuse(
          ORIGIN,
          "bought given beside "
              + in.quoted(salt)
              + ", allowed recovered or unknown with salt; glycerol bought with a label holds none,"
              + " leave one out");
    }
    return GlycerolOrigin.of(stated, saltFraction > 0);
  }
}
