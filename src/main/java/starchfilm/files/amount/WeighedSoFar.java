package starchfilm.files.amount;

/**
 * A weighing typed in one word, {@code 6h=412g}: so long after the pour, so heavy.
 *
 * @param timeS time since the pour (s, 0 or more)
 * @param massKg what the scale showed (kg, above 0)
 */
public record WeighedSoFar(double timeS, double massKg) {
  private static final String ALLOWED = "time=mass, such as 6h=412g or 1d12h=388.5g";

  /**
   * Reads a weighing.
   *
   * @param text such as {@code 6h=412g}; a plus before the time is allowed
   * @return the weighing
   * @throws MistypedException where the text is no weighing
   */
  public static WeighedSoFar parse(String text) {
    int equals = text.indexOf('=');
    if (equals < 0 || equals != text.lastIndexOf('=')) {
      throw new MistypedException(text, ALLOWED, "join time and mass with one =");
    }
    String time = text.substring(0, equals).strip();
    double timeS = Dimension.TIME.si(time.startsWith("+") ? time.substring(1) : time);
    double massKg = Dimension.MASS.si(text.substring(equals + 1));
    if (timeS < 0) {
      throw new MistypedException(text, ALLOWED, "a plate cannot be weighed before the pour");
    }
    if (massKg <= 0) {
      throw new MistypedException(text, ALLOWED, "write what the scale showed, above 0 g");
    }
    return new WeighedSoFar(timeS, massKg);
  }
}
