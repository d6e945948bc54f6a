/**
 * What somebody asks, read alike from the options of a command and from the fields of a form.
 *
 * <p>A {@code Field} is one thing that may be written: what a command and a page call it, declared
 * in {@code fields.txt}. {@code Entries} are what somebody wrote, by field, at one door; {@code
 * EntryReader} reads them, collects every mistake in the words of that door, and lists what was
 * assumed. A table of trials is read by the same readers ({@code TrialTable}). Each question is a
 * record with its assumptions: {@code AssayRequest}, {@code PlanQuestion} and their kin.
 */
@NullMarked
package starchfilm.request;

import org.jspecify.annotations.NullMarked;
