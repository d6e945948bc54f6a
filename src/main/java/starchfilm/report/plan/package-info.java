/**
 * What is said before anything is poured: the recipes of a plan, as sheets, page, lines and trial
 * file; how thick to pour; what a jar holds.
 *
 * <p>Start from {@link starchfilm.report.plan.PlanSheet}.
 */
@NullMarked
package starchfilm.report.plan;

import org.jspecify.annotations.NullMarked;
