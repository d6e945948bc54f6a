package starchfilm.report.plan;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.JsonText;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;

/**
 * What is in a jar, for other programs. Every name carries its unit; where the figures are
 * withheld, {@code withheld} says why and they are left out.
 */
public final class AssayFile {
  private AssayFile() {}

  /**
   * The jar as JSON.
   *
   * @param assay what is in it
   * @param assumptions what was taken for granted, a sentence each
   * @return one object
   */
  public static String json(Assay assay, List<String> assumptions) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("what", "assay of a jar");
    root.put("origin", assay.origin().name().toLowerCase(Locale.ROOT));
    root.put("mass_g", JsonText.rounded(G_PER_KG * assay.massKg().value()));
    assay.withheld().ifPresent(why -> root.put("withheld", why));
    assay.content().ifPresent(content -> content(content, root));
    assay
        .alcoholLeft()
        .ifPresent(
            left ->
                root.put(
                    left.alcohol().tradeName() + "_at_most_g",
                    JsonText.rounded(G_PER_KG * left.mostKg())));
    assay.remarks().forEach(root.putArray("remarks")::add);
    assumptions.forEach(root.putArray("assumptions")::add);
    Cautions.of(assay).stream().map(Caution::sentence).forEach(root.putArray("cautions")::add);
    return JsonText.of(root);
  }

  private static void content(JarContent content, ObjectNode root) {
    put(root, "pure_glycerol_g", content.pureGlycerolKg().times(G_PER_KG));
    put(root, "glycerol_pct", content.glycerol().times(PERCENT_PER_UNIT));
    put(root, "salt_and_soap_pct", content.stays().times(PERCENT_PER_UNIT));
    put(root, "water_and_alcohol_pct", content.volatiles().times(PERCENT_PER_UNIT));
  }

  private static void put(ObjectNode root, String name, Band band) {
    root.putObject(name)
        .put("low", JsonText.rounded(band.low()))
        .put("middle", JsonText.rounded(band.middle()))
        .put("high", JsonText.rounded(band.high()));
  }
}
