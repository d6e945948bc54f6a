/**
 * The content of a jar of glycerol.
 *
 * <p>Three ways lead to an {@link starchfilm.jar.assay.Assay}: the label of a bought jar, a reading
 * (density by hydrometer or weighed volume, or refractive index) turned back into a mixture of
 * glycerol and water, and the record of how the glycerol was recovered ({@code
 * starchfilm.jar.recovery}). A reading and a record together are better than either: the record
 * tells the salt that makes a reading lie. Fractions are kg per kg of what the jar holds; ranges
 * are 10 to 90 %. Start from {@link starchfilm.jar.assay.Assayer}.
 */
@NullMarked
package starchfilm.jar.assay;

import org.jspecify.annotations.NullMarked;
