/**
 * The commands: each is {@code Asked} something, calls the rooms below, and prints.
 *
 * <p>Exit codes: 0 done, 1 could not be computed, 2 wrong usage or input. Results go to standard
 * output or to the named file, faults to standard error.
 */
@NullMarked
package starchfilm.cli;

import org.jspecify.annotations.NullMarked;
