package starchfilm.jar.reagent;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import starchfilm.numerics.evidence.Estimate;

/** The rules every dose of acid or lye obeys. */
final class Doses {

  private Doses() {}

  static void requireNotNegative(String what, Estimate mol) {
    if (mol.value() < 0) {
      throw new IllegalArgumentException(
          what + ": " + mol.value() + " mol given, allowed 0 mol or more; write what was added");
    }
  }

  static void requireStrength(String what, Estimate strength) {
    if (!(strength.value() > 0 && strength.value() <= 1)) {
      throw new IllegalArgumentException(
          "strength of the "
              + what
              + ": "
              + strength.value() * PERCENT_PER_UNIT
              + " % given, allowed more than 0 to 100 %; write the per cent of its mass");
    }
  }
}
