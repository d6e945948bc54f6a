package starchfilm.numerics.units;

/** Factors that turn a reader's unit into SI and back. */
public final class Units {
  /** 0 degrees Celsius (K). Source: BIPM, The International System of Units, 9th edition, 2019. */
  public static final double ZERO_CELSIUS_K = 273.15;

  /** A minute (s). */
  public static final double MINUTE_S = 60;

  /** An hour (s). */
  public static final double HOUR_S = 3_600;

  /** A day (s). */
  public static final double DAY_S = 86_400;

  /** Kilograms in a gram. */
  public static final double KG_PER_G = 1e-3;

  /** Grams in a kilogram. */
  public static final double G_PER_KG = 1e3;

  /** Millimetres in a metre. */
  public static final double MM_PER_M = 1e3;

  /** Square centimetres in a square metre. */
  public static final double CM2_PER_M2 = 1e4;

  /** One per cent, as a ratio. */
  public static final double PERCENT = 1e-2;

  /** Per cent in a ratio of 1. */
  public static final double PERCENT_PER_UNIT = 100;

  private Units() {}
}
