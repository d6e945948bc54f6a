/**
 * Acids and lyes as people dose them, and the pH they lead to.
 *
 * <p>Amounts are counted in moles of charge, so that an acid of two protons and a lye of one can be
 * set against each other. {@link starchfilm.jar.reagent.PhAdjustment} says how many millilitres go
 * from one pH to another by the balance of charges in water at 25 C; a buffer counts only where it
 * is stated. Start from {@link starchfilm.jar.reagent.Reagent}.
 */
@NullMarked
package starchfilm.jar.reagent;

import org.jspecify.annotations.NullMarked;
