package starchfilm.jar.assay;

import java.util.List;
import java.util.Optional;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Source;

/**
 * What is in a jar of glycerol.
 *
 * @param massKg what the jar holds (kg)
 * @param stock glycerol and salt as fractions, for a recipe
 * @param glycerol glycerol (kg per kg jar)
 * @param salt salt, soap and whatever else stays in a film (kg per kg jar)
 * @param water water, with what alcohol there may be (kg per kg jar)
 * @param pureGlycerolKg glycerol at hand (kg)
 * @param alcoholLeft alcohol that may be in it; empty for a bought jar, or where nothing is known
 * @param saltAdvice what the salt does to a film
 * @param recovery the sums over the batch, for a recovered jar
 * @param remarks what the figures say beside that, a sentence each
 * @param sources where the figures come from
 */
public record Assay(
    Estimate massKg,
    GlycerolStock stock,
    Band glycerol,
    Band salt,
    Band water,
    Band pureGlycerolKg,
    Optional<AlcoholLeft> alcoholLeft,
    SaltAdvice saltAdvice,
    Optional<RecoveryBalance> recovery,
    List<String> remarks,
    List<Source> sources) {
  /** Copies the lists. */
  public Assay {
    remarks = List.copyOf(remarks);
    sources = List.copyOf(sources);
  }
}
