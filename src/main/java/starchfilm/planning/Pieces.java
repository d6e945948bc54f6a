package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.CENTIMETRE;

import starchfilm.casting.Plate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

/**
 * Film wanted: pieces of one size, or an area. What lies near the edge of a plate is cut off.
 *
 * @param count how many pieces; 1 for an area
 * @param lengthM one side of a piece (m); of an area its root
 * @param widthM the other side (m)
 * @param isArea whether any shape will do
 */
public record Pieces(int count, double lengthM, double widthM, boolean isArea) {
  /** Cut off all round, for the edge is thinner and curls (m); judged, no source. */
  public static final double MARGIN_M = 0.01;

  private static final int MOST = 100_000;
  private static final double SMALLEST_M = 2e-3;
  private static final double MOST_AREA_M2 = 1_000;

  /** Checks number and sides. */
  public Pieces {
    require(
        count >= 1 && count <= MOST,
        count + " pieces",
        "1 to " + MOST + " pieces",
        "write how many you need");
    require(
        isArea ? lengthM * widthM <= MOST_AREA_M2 : Math.min(lengthM, widthM) >= SMALLEST_M,
        isArea
            ? Figures.of(lengthM * widthM, 3) + " m2"
            : "pieces of " + Figures.of(1e3 * Math.min(lengthM, widthM), 3) + " mm",
        isArea ? "up to 1000 m2" : "sides of 2 mm or more",
        "check the unit");
  }

  /** Film of a whole area (m2), in any shape. */
  public static Pieces area(double m2) {
    return new Pieces(1, Math.sqrt(m2), Math.sqrt(m2), true);
  }

  /**
   * How many a plate gives.
   *
   * @param plate the plate
   * @return pieces in rows, in the better of two directions; of an area the share of it that a
   *     plate gives
   */
  double from(Plate plate) {
    double length = Math.max(0, plate.longestM() - 2 * MARGIN_M);
    double width = Math.max(0, plate.shortestM() - 2 * MARGIN_M);
    boolean oval = plate.outline() == Plate.Outline.ELLIPSE;
    if (isArea) {
      return length * width * (oval ? Math.PI / 4 : 1) / (lengthM * widthM);
    }
    return Math.max(laid(length, width, oval), laid(width, length, oval));
  }

  /** The best number of rows about the middle, each as full as its ends allow. */
  private int laid(double acrossM, double upM, boolean oval) {
    int best = 0;
    for (int rows = fitting(upM, widthM); rows > 0; rows--) {
      int pieces = 0;
      for (int row = 0; row < rows; row++) {
        double furthestM = widthM * Math.max(rows / 2.0 - row, row + 1 - rows / 2.0);
        double ofHeight = Math.min(1, 2 * furthestM / upM);
        pieces += fitting(oval ? acrossM * Math.sqrt(1 - ofHeight * ofHeight) : acrossM, lengthM);
      }
      best = Math.max(best, pieces);
    }
    return best;
  }

  /** A piece that fits to a hair fits. */
  private static int fitting(double roomM, double pieceM) {
    return (int) Math.floor(roomM / pieceM + 1e-9);
  }

  /** Plates that are needed. */
  int platesOf(Plate plate) {
    double each = from(plate);
    require(
        each != 0,
        "pieces of %s × %s on a plate of %s"
            .formatted(
                Figures.noted(CENTIMETRE.of(lengthM)), CENTIMETRE.noted(widthM), plate.size()),
        "pieces that fit 10 mm inside the plate's edge",
        "take larger plates or smaller pieces");
    return (int) Math.ceil(count / each - 1e-9);
  }

  private static void require(boolean holds, String given, String allowed, String mend) {
    Refusal.unless(holds, "pieces", given, allowed + "; " + mend);
  }
}
