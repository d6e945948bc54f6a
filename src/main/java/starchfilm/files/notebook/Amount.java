package starchfilm.files.notebook;

import java.math.BigDecimal;
import starchfilm.numerics.evidence.Estimate;

/** An amount as a person notes it, in the unit of its field. */
sealed interface Amount {
  /** A number. */
  record Exact(double value, double lastDigit) implements Amount {
    static Exact of(String literal, double value) {
      // A nought may have any exponent, also one that no number could have.
      String digits = value == 0 ? literal.replaceFirst("[eE].*", "") : literal;
      return new Exact(value, Math.pow(10, -Math.max(0, new BigDecimal(digits).scale())));
    }
  }

  /** Somewhere between two ends. */
  record Between(double from, double to) implements Amount {}

  /** Said to be unknown, or left out. */
  enum Missing implements Amount {
    /** Said to be unknown. */
    UNKNOWN,
    /** Left out. */
    NOT_RECORDED
  }

  /** True where a number or a range stands. */
  default boolean isKnown() {
    return !(this instanceof Missing);
  }

  /**
   * The amount, a number taken as exact.
   *
   * @param otherwise what to take where nothing is known
   */
  default Estimate or(Estimate otherwise) {
    if (this instanceof Exact exact) {
      return Estimate.exact(exact.value());
    }
    if (this instanceof Between range) {
      return Estimate.between(range.from(), range.to());
    }
    return otherwise;
  }
}
