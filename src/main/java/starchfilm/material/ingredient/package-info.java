/**
 * The ingredients: starch powders, aqueous glycerol, vinegar and water, each with its published
 * properties.
 *
 * <p>A starch powder is weighed with its own moisture (wet basis: kg water per kg powder as
 * weighed). Aqueous glycerol is described by the mass fraction of glycerol in glycerol and water.
 * Vinegar is water and acetic acid. Each correlation is a class named after its source: density,
 * refractive index and water activity of aqueous glycerol, and the pH of acetic acid. Molar masses
 * are added up from the atoms. Start from {@link starchfilm.material.ingredient.StarchKind}.
 */
@NullMarked
package starchfilm.material.ingredient;

import org.jspecify.annotations.NullMarked;
