/**
 * The findings of a file that is read: a {@link starchfilm.files.findings.Fault} is impossible and
 * says how to mend it, a {@link starchfilm.files.findings.Notice} is merely odd.
 *
 * <p>Every fault has its place, what is given and what is allowed. Faults are collected and
 * reported together. Start from {@link starchfilm.files.findings.Findings}.
 */
@NullMarked
package starchfilm.files.findings;

import org.jspecify.annotations.NullMarked;
