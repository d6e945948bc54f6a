package starchfilm.files.saving;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Synonyms;
import starchfilm.files.amount.TypedAmount;

/**
 * What people call the columns of a table of trials in English, German, French and Spanish, with
 * the unit behind the word: {@code water (ml)}, {@code Luft °F}, {@code glycérine g}.
 */
final class ColumnWords {
  private static final String WORDS =
      """
      name: trial versuch essai prueba ensayo nom nombre title
      poured_at: poured pouredat date datum gegossen fecha coule vertido
      recipe.starch.kind: starch kind starchkind starke starkeart amidon fecule almidon
      recipe.starch.mass_g: starchmass powder starkemenge
      recipe.starch.moisture_pct: moisture feuchtedespulvers humedaddelpolvo
      recipe.glycerol.mass_g: glycerol glycerin glycerine glyzerin glicerina glicerol
      recipe.glycerol.purity_pct: purity reinheit purete pureza
      recipe.vinegar.mass_g: vinegar essig vinaigre vinagre
      recipe.vinegar.acidity_pct: acidity saure acidite acidez
      recipe.water.mass_g: water wasser eau agua
      recipe.salt_g: salt salz sel sal
      recipe.inert_g: inert filler citricacid zitronensaure acidecitrique acidocitrico chalk
      cook.minutes: minutes cook cooked cooktime kochzeit cuisson coccion
      cook.top_C: cooktop kochtemperatur
      pour.plate.material: plate material platte plaque placa bandeja
      pour.plate.length_mm: length lange longueur largo
      pour.plate.width_mm: width breite largeur ancho
      pour.plate.diameter_mm: diameter durchmesser diametre diametro
      pour.plate.tare_g: tare tara emptyplate leergewicht
      pour.plates: plates platten plaques placas
      pour.poured_g: pouredmass paste paste gussmasse pate pasta
      pour.wet_thickness_mm: wet wetthickness thickness nassdicke dicke epaisseur espesor
      room.name: room raum piece sala habitacion
      room.air_C: air temperature roomtemperature luft temperatur lufttemperatur raumtemperatur \
      temperatura aire
      room.rh_pct: rh humidity relativehumidity feuchte luftfeuchte luftfeuchtigkeit humidite humedad
      dry_thickness_um: drythickness filmthickness trockendicke filmdicke epaisseurseche espesorseco
      faults.kind: fault faults fehler defaut defecto
      rating: stars bewertung note puntuacion
      remarks: remark notes bemerkung bemerkungen remarque remarques observaciones
      """;
  private static final Pattern UNIT =
      Pattern.compile("(.*?)[\\s,/(\\[]+(?:in\\s+)?([^\\s()\\[\\]]+)[)\\]]*");
  private static final Map<String, String> KEYS = Synonyms.of(WORDS);

  /**
   * What a head means.
   *
   * @param key the key of a trial file
   * @param unit what its bare numbers are counted in; empty for that of the key
   */
  record Meaning(String key, String unit) {}

  private ColumnWords() {}

  /** What a head in somebody's own words means; empty where it is not known. */
  static Optional<Meaning> of(String head) {
    Matcher unit = UNIT.matcher(head.strip());
    if (unit.matches() && isUnit(unit.group(2))) {
      String measured = unit.group(2).replace("\u00B0", "");
      return Optional.ofNullable(KEYS.get(plain(unit.group(1))))
          .map(key -> new Meaning(key.replace("starch.kind", "starch.mass_g"), measured));
    }
    return Optional.ofNullable(KEYS.get(plain(head))).map(key -> new Meaning(key, ""));
  }

  private static boolean isUnit(String word) {
    return TypedAmount.isUnit(word.replace("\u00B0", "").toLowerCase(Locale.ROOT));
  }

  private static String plain(String words) {
    return Normalizer.normalize(words.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("[\\p{M}\\s_'\u2019()\\[\\].:-]", "")
        .replace("\u00DF", "ss");
  }
}
