package starchfilm.numerics.figures;

import java.util.Locale;

/** A constant that is called in the trade as it is called here. */
public interface TradeNamed {
  /** Its name as a constant. */
  String name();

  /**
   * The name of the trade, as trial files spell it.
   *
   * @return lower case, such as {@code palm kernel} for PALM_KERNEL
   */
  default String tradeName() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
