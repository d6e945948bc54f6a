package starchfilm.jar.reagent;

/** An acid or a lye that is added as a solution. */
public sealed interface Reagent permits Acid, Lye {
  /**
   * Its name.
   *
   * @return lower case
   */
  String tradeName();

  /**
   * Its short name.
   *
   * @return such as "HCl", "vinegar" or "NaOH"
   */
  String formula();

  /**
   * Molar mass.
   *
   * @return kg/mol
   */
  double kgPerMol();

  /**
   * Density of its solution in water at 20 C.
   *
   * @param strength acid or lye (kg per kg solution)
   * @return kg/m3
   */
  double solutionKgPerM3(double strength);

  /**
   * Charge that a mole of it brings into a solution of a pH.
   *
   * @param ph pH of the solution
   * @return mol of charge per mol: 1 for lye, -1 for hydrochloric acid
   */
  double chargeBroughtAt(double ph);
}
