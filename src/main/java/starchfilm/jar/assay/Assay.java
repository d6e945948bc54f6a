package starchfilm.jar.assay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.figures.Figures;

/**
 * The content of a jar of glycerol, or why it is not stated.
 *
 * @param massKg what the jar holds (kg)
 * @param origin where it comes from
 * @param content its parts; empty where what is known of it cannot all be true
 * @param withheld why there is no content; empty where there is
 * @param alcoholLeft alcohol that may be in it; empty for a bought jar, or where nothing is known
 * @param recovery the sums over the batch, for a recovered jar
 * @param remarks what the figures say, a sentence each
 * @param sources where the figures come from
 */
public record Assay(
    Estimate massKg,
    GlycerolOrigin origin,
    Optional<JarContent> content,
    Optional<String> withheld,
    Optional<AlcoholLeft> alcoholLeft,
    Optional<RecoveryBalance> recovery,
    List<String> remarks,
    List<Source> sources) {
  public Assay {
    remarks = List.copyOf(remarks);
    sources = List.copyOf(sources);
  }

  /**
   * The same with what its glycerol weighs at another strength.
   *
   * @param strength glycerol (kg per kg, above 0)
   * @return with a remark more, where the content is known
   */
  public Assay at(double strength) {
    if (content.isEmpty()) {
      return this;
    }
    Band kg = content.get().pureGlycerolKg().times(1 / strength);
    List<String> more = new ArrayList<>(remarks);
    more.add(
        "Its glycerol weighs %s at %s %%%s"
            .formatted(
                Assayer.grams(kg, ""),
                Figures.percent(strength),
                kg.middle() > massKg.value()
                    ? ": add water up to that weight."
                    : ", less than the jar holds now: it is weaker than that already."));
    return new Assay(massKg, origin, content, withheld, alcoholLeft, recovery, more, sources);
  }

  /**
   * Returns what the jar's salt does to a film; where most likely there is none, what the most
   * would do.
   */
  public Optional<SaltAdvice> saltAdvice() {
    return content.map(
        parts -> {
          double glycerol = parts.glycerol().middle();
          double stays = parts.stays().middle() > 0 ? parts.stays().middle() : parts.stays().high();
          return SaltAdvice.of(glycerol > 0 ? stays / glycerol : 0);
        });
  }
}
