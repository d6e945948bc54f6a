package starchfilm.planning;

/** Whether the cupboard fills every group of a series. */
final class SeriesSupplies {
  private static final double SLACK = 1 + 1e-9;

  private SeriesSupplies() {}

  static void require(Series series) {
    Supplies supplies = series.request().supplies();
    boolean wantsGlycerol =
        series.series().what() == Varied.GLYCEROL
            && series.series().values().stream().anyMatch(value -> value > 0);
    if (wantsGlycerol && supplies.glycerolKg() == 0) {
      throw refused("no glycerol", "a jar that holds some", "write what the jar holds");
    }
    if (series.series().what() == Varied.VINEGAR && supplies.vinegarAcidityFraction() == 0) {
      throw refused("no vinegar", "a vinegar with its acid", "write its acid, such as 5%");
    }
    double glycerol = series.glycerolKg();
    if (glycerol > supplies.glycerolKg() * SLACK) {
      throw refused(
          Sentence.grams(glycerol) + " of glycerol for all groups",
          "the " + Sentence.grams(supplies.glycerolKg()) + " in the jar",
          "use fewer plates per group, fewer groups, smaller plates or lower levels");
    }
    for (StarchAtHand starch : supplies.starches()) {
      double needed =
          series.groups().stream()
              .flatMap(group -> group.recipe().potfuls().stream())
              .flatMap(
                  potful ->
                      potful.recipe().starches().stream()
                          .filter(portion -> portion.kind() == starch.kind())
                          .map(portion -> potful.times() * portion.massKg().value()))
              .mapToDouble(kg -> kg)
              .sum();
      if (needed > starch.massKg().orElse(Double.POSITIVE_INFINITY) * SLACK) {
        throw refused(
            Sentence.grams(needed) + " of " + starch.kind() + " starch for all groups",
            "the " + Sentence.grams(starch.massKg().orElseThrow()) + " at hand",
            "use fewer plates per group, fewer groups or smaller plates");
      }
    }
  }

  private static UnworkableRequestException refused(String given, String allowed, String mend) {
    return new UnworkableRequestException(Sentence.of("series", given, allowed, mend));
  }
}
