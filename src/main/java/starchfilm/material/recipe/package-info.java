/**
 * From what was weighed to what will dry.
 *
 * <p>A {@link starchfilm.material.recipe.Recipe} is what went into the pot, as weighed. A {@link
 * starchfilm.material.recipe.Paste} is what is in the pot after the cook: moisture of the powder,
 * water of the glycerol and of the vinegar are counted as water, and the water that boiled away is
 * gone. A {@link starchfilm.material.recipe.Composition} is the paste per kilogram and on the dry
 * basis; dry solids are dry starch, glycerol and salt, which stay, while water and acetic acid
 * leave. The plasticiser level is kg glycerol per kg <em>dry</em> starch. Mass is conserved at
 * every step.
 */
@NullMarked
package starchfilm.material.recipe;

import org.jspecify.annotations.NullMarked;
