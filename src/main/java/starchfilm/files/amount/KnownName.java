package starchfilm.files.amount;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds what a name means among those the program knows: the names of trade and kitchen in English,
 * German, French and Spanish, whatever their case, accents, blanks and hyphens.
 */
public final class KnownName {
  /** A line per thing: its name here, then its other names without blanks, accents and hyphens. */
  private static final String OTHERS =
      """
      corn: maize mais maiz cornflour speise
      waxy corn: waxymaize wachsmais maiscireux maizceroso
      high-amylose corn: highamylosemaize highamylose amylomaize amylomais
      potato: potatoes kartoffel kartoffelmehl pommedeterre depommedeterre fecule patata papa
      tapioca: cassava manioc maniok mandioca yuca yucca manihot tapiocaflour
      wheat: weizen ble trigo
      rice: reis riz arroz
      glycerol: glycerin glycerine glyzerin glicerina glicerol
      glass: glas verre vidrio windowglass borosilicate mirror
      polypropylene: pp polypropylen
      acrylic: pmma plexiglass acryl acrylglas
      ptfe: nonstick antihaft antiadherent antiadherente
      silicone: silikon silicona siliconemat bakingmat backmatte
      laminate: melamine worktop
      steel: stainless stainlesssteel edelstahl stahl acier inox acero metal
      enamel: emaille email esmalte enamelled enameled
      aluminium: aluminum alu aluminio foil aluminiumfoil aluminumfoil alufolie
      polyester: polyestersheet polyesterfilm pet petsheet petfilm transparency
      baking paper: bakingparchment parchment parchmentpaper backpapier papiercuisson \
      papiersulfurise papeldehornear papelvegetal
      wood: holz bois madera plywood bamboo
      rapeseed: canola raps colza
      sunflower: sonnenblumen tournesol girasol
      soybean: soya soja soy
      olive: oliven oliva
      peanut: groundnut erdnuss arachide cacahuete mani
      cottonseed: cotton baumwoll coton algodon
      safflower: distel carthame cartamo
      palm: palme palma
      palm kernel: palmkern palmiste palmiste
      coconut: kokos coco
      lard: schmalz saindoux manteca
      tallow: beeftallow talg suif sebo
      used frying oil: usedfrying usedcooking wastecooking usedvegetable wastevegetable frittier \
      friture fritura
      sodium hydroxide: lye causticsoda natronlauge atznatron soude soudecaustique sosacaustica
      potassium hydroxide: causticpotash kalilauge atzkali potasse potassecaustique potasacaustica
      hydrochloric acid: muriatic salz chlorhydrique clorhidrico
      sulfuric acid: sulphuric schwefel sulfurique sulfurico
      phosphoric acid: phosphor phosphorique fosforico
      citric acid: zitronen citronen citrique citrico
      vinegar: essig vinaigre vinagre acetic
      baking soda: natron bicarbonate bicarb bicarbonato sodiumbicarbonate
      methanol: methylalcohol woodalcohol metanol
      ethanol: ethylalcohol alcohol etanol spirit
      stiff: hard rigid firm steif starr hart rigide raide rigido duro
      flexible: bendy supple pliable biegsam flexibel souple
      stretchy: soft elastic rubbery dehnbar weich elastisch elastique mou elastico blando
      """;

  private static final Map<String, String> MEANINGS = Synonyms.of(OTHERS);

  /** What is asked for so often that it deserves a sentence of its own: a line per sentence. */
  private static final Map<String, String> NOT_HERE =
      Synonyms.of(
          """
          gelatin is a protein; its film is not modelled here: gelatin gelatine gelatina
          agar is no starch; its film is not modelled here: agar agaragar
          pectin is no starch; its film is not modelled here: pectin
          alginate is no starch; its film is not modelled here: alginate
          citric acid is no starch; it stays in the film, so write it as other solids: citric
          write its grain, such as wheat, and in inert_pct what of it is no starch: wheatflour \
          riceflour flour
          arrowroot is not modelled; tapioca is nearest to it: arrowroot
          sago is not modelled; tapioca is nearest to it: sago
          sweet potato is not modelled; tapioca is nearest to it: sweetpotato
          pea starch is not modelled; it is rich in amylose, as is wheat: pea
          write the oil that its label names, such as soybean or rapeseed: vegetable cooking
          """);

  private KnownName() {}

  /**
   * The one that carries a name.
   *
   * @param <E> what is named
   * @param typed as typed
   * @param known all there are
   * @param names the names of one, the first being the one shown
   * @return the one meant
   * @throws MistypedException where none is, with the nearest name
   */
  public static <E> E find(String typed, List<E> known, Function<E, List<String>> names) {
    for (E one : known) {
      if (names.apply(one).stream().anyMatch(name -> isNamed(typed, name))) {
        return one;
      }
    }
    List<String> shown = known.stream().map(one -> names.apply(one).get(0)).toList();
    throw new MistypedException(
        typed, String.join(", ", shown), whatThen(typed, shown).orElse("write one of these"));
  }

  /**
   * What to write for a name that means nothing here.
   *
   * @param typed as typed
   * @param shown the names there are
   * @return a sentence, where there is more to say than to write one of these
   */
  public static Optional<String> whatThen(String typed, Collection<String> shown) {
    String here = NOT_HERE.get(plain(typed));
    if (here != null && shown.stream().noneMatch(name -> isNamed(typed, name))) {
      return Optional.of(here);
    }
    Collection<String> all = new ArrayList<>(shown);
    MEANINGS.forEach(
        (other, meaning) -> {
          if (shown.contains(meaning)) {
            all.add(other);
          }
        });
    return NearMiss.of(typed, all)
        .map(word -> shown.contains(word) ? word : MEANINGS.getOrDefault(word, word))
        .map(word -> "did you mean " + word + "?");
  }

  /**
   * The one of a few words that another name means.
   *
   * @param typed as typed
   * @param words the words
   * @return one of them; empty where none is meant
   */
  public static Optional<String> among(String typed, Collection<String> words) {
    return words.stream().filter(word -> isNamed(typed, word)).findFirst();
  }

  private static boolean isNamed(String typed, String name) {
    String plain = plain(typed);
    return plain.equals(plain(name)) || name.equals(MEANINGS.get(plain));
  }

  private static String plain(String name) {
    String small = name.toLowerCase(Locale.ROOT).replaceFirst("\u00f6l$", "oil");
    return Normalizer.normalize(small, Normalizer.Form.NFD)
        .replaceAll("[\\s_'\u2019\\p{M}-]", "")
        .replaceFirst(
            "^(?:huile|aceite|amidon|almidon|fecule|fecula|acide|acido)(?:de|d)?(?=.)", "")
        .replaceFirst("(?<=.)(?:acid|oil|starch|starke|saure)$", "");
  }
}
