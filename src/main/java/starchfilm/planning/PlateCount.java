package starchfilm.planning;

/** How many plates the cupboard fills. */
final class PlateCount {
  private static final double[] LATTICE = {0, 0.25, 0.5, 0.75, 1};

  /** A plate that lacks a millionth of its glycerol is full. */
  private static final double SLACK = 1e-6;

  private PlateCount() {}

  /**
   * The most plates of one space, looked at for one plate.
   *
   * @return 0 where not even one can be poured
   */
  static int most(RecipeSpace onePlate) {
    int most = 0;
    for (double starch : LATTICE) {
      for (double plasticiser : LATTICE) {
        // Without vinegar and at the floor, every other limit leaves the most room.
        Candidate candidate = onePlate.at(new double[] {starch, plasticiser, 0, 0});
        if (candidate.isPossible()) {
          double plates = onePlate.suppliesCeilingM(candidate.design()) / candidate.floorM();
          most =
              Math.max(
                  most,
                  (int)
                      Math.min(onePlate.request().kitchen().plates(), Math.floor(plates + SLACK)));
        }
      }
    }
    return most;
  }
}
