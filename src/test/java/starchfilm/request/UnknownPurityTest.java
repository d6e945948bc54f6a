package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import starchfilm.files.findings.Words;
import starchfilm.files.notebook.TrialField;
import starchfilm.material.recipe.GlycerolStock;

/** What an unassayed jar is taken to hold is the same at every door. */
class UnknownPurityTest {
  private static final String SAID = Words.percent(GlycerolStock.UNKNOWN_PURITY);

  @Test
  void theFieldsOfATrialAndOfAJarAssumeIt() {
    TrialField ofTrial = TrialField.TRIAL.field("recipe").field("glycerol").field("purity_pct");
    assertThat(ofTrial.assumed()).isEqualTo(SAID + " glycerol");
    assertThat(TrialField.JAR.field("purity_pct").assumed()).isEqualTo(SAID + " glycerol");
  }

  @Test
  void theHelpOfAPlanSaysIt() {
    Field purity = FieldTable.find(FieldTable.SECTIONS, "supplies.purity");
    assertThat(purity.help().replace("%%", "%")).endsWith("Not given: " + SAID + ".");
  }
}
