package starchfilm.request;

import java.util.List;
import java.util.Optional;
import starchfilm.material.recipe.GlycerolOrigin;

/** Where a jar's glycerol comes from, asked alike wherever a jar is meant. */
final class JarOrigin {

  private JarOrigin() {}

  static Optional<GlycerolOrigin> stated(EntryReader in) {
    return in.choice("jar.origin", List.of(GlycerolOrigin.values()));
  }

  /** The origin of a jar whose salt may have been written. */
  static GlycerolOrigin of(EntryReader in, String salt, double saltFraction) {
    Optional<GlycerolOrigin> stated = stated(in);
    if (saltFraction > 0 && stated.equals(Optional.of(GlycerolOrigin.BOUGHT))) {
      in.refuse(
          "jar.origin",
          """
          bought given beside %s, allowed recovered or unknown with salt; glycerol bought with a \
          label holds none, leave one out"""
              .formatted(in.quoted(salt)));
    }
    return GlycerolOrigin.of(stated, saltFraction > 0);
  }
}
