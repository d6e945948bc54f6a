/**
 * What turns up while a file is read: a {@link starchfilm.findings.Fault} is impossible and says
 * how to mend it, a {@link starchfilm.findings.Notice} is merely odd.
 *
 * <p>Every fault has its place, what is given and what is allowed. Faults are collected and told
 * together. Start from {@link starchfilm.findings.Findings}.
 */
@NullMarked
package starchfilm.findings;

import org.jspecify.annotations.NullMarked;
