/**
 * Where recovered glycerol comes from: the chemistry of an oil batch, from oil, alcohol and lye to
 * the jar.
 *
 * <p>A fat is three fatty acids on one glycerol. Alcohol takes the acids over as esters and sets
 * the glycerol free; lye speeds it up and makes some soap on the way. Acid then splits the soap
 * into fatty acid, which floats and is taken off, and salt, which stays in the glycerol; a little
 * lye brings the pH back. {@link starchfilm.jar.recovery.RecoveryLog} is what the maker did, {@link
 * starchfilm.jar.recovery.RecoveryBalance} what that must have given, by moles. Amounts of acid and
 * lye are counted in moles of charge.
 *
 * <p>This package describes what somebody has done; it is no instruction. Local rules and a
 * supervising teacher or licensed practice come first.
 */
@NullMarked
package starchfilm.jar.recovery;

import org.jspecify.annotations.NullMarked;
