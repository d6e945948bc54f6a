package starchfilm.material.sorption;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** Compositions for tests. */
final class FilmCompositions {
  private static final long SEED = 20260101;

  private FilmCompositions() {}

  /** A film of one starch; y glycerol in starch and glycerol, s salt in the dry solids. */
  static Composition of(StarchKind kind, double y, double s) {
    return of(Map.of(kind, 1.0), y, s);
  }

  static Composition of(Map<StarchKind, Double> shares, double y, double s) {
    double solids = 0.1;
    double starchAndGlycerol = solids * (1 - s);
    return new Composition(
        shares, starchAndGlycerol * (1 - y), starchAndGlycerol * y, solids * s, 0, 1 - solids, 0);
  }

  /** A hundred films drawn with a fixed seed: one to three kinds, any glycerol, salt to 10 %. */
  static Stream<Composition> drawn() {
    SplittableRandom random = new SplittableRandom(SEED);
    return Stream.generate(() -> draw(random)).limit(100);
  }

  private static Composition draw(SplittableRandom random) {
    Map<StarchKind, Double> shares = new EnumMap<>(StarchKind.class);
    int kinds = 1 + random.nextInt(3);
    for (int i = 0; i < kinds; i++) {
      StarchKind kind = StarchKind.values()[random.nextInt(StarchKind.values().length)];
      shares.merge(kind, 1.0 / kinds, Double::sum);
    }
    double y = random.nextInt(10) == 0 ? random.nextInt(2) : random.nextDouble();
    double s = random.nextInt(2) == 0 ? 0 : 0.1 * random.nextDouble();
    return of(shares, y, s);
  }
}
