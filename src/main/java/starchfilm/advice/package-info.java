/**
 * From faults seen to likely causes, and from there to the next trial.
 *
 * <p>A fault is something its maker saw. A {@link starchfilm.advice.Cause} is something the model
 * can put a figure to. The table {@code rules.json} says which causes a fault may have, where on
 * the plate, and what the cause is held against: a {@code Measure} of the model, or the cause's own
 * figure, with the limits from which on it is one. Its sentences call figures by name; {@code
 * Figure} knows them all. A cause that is held against a measure is put right on paper and the
 * model rerun: what part of the trouble goes then is how well it explains the fault. A cause whose
 * own figure is not in the notebook explains nothing; then the trials do not tell.
 *
 * <p>The same table says which {@link starchfilm.change.Change} answers a cause. Each is tried in
 * steps, mildest first, every step rerun, and the next trial changes one or two things, never more,
 * so that the trials can tell which of them did it. A {@link starchfilm.advice.Contrast} takes the
 * changes between two trials that were made and reruns them one at a time.
 *
 * <p>Limits: which of two causes it was, only another trial can tell; supports are judged from the
 * middle case of the model, and what the model does not compute (bubbles, lumps, adhesion) rests on
 * limits of the trade. Start from {@link starchfilm.advice.Adviser}.
 */
@NullMarked
package starchfilm.advice;

import org.jspecify.annotations.NullMarked;
