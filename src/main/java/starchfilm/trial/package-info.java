/**
 * Trials and the notebook they make: one JSON file a trial, read tolerantly and complained about
 * precisely, and rewritten without losing what the program does not know.
 *
 * <p>The keys of a file carry their unit; the records here are SI. An amount may be a number, a
 * range {@code {"from": 5, "to": 7}} or {@code "unknown"}; a field may be left out. A range widens
 * the bands of the forecast; what is unknown or left out is assumed, widely, and listed as {@link
 * starchfilm.trial.NotRecorded} with what it costs. Only what is impossible is a {@link
 * starchfilm.trial.Fault}, with its place and the way to mend it; what is merely odd is a {@link
 * starchfilm.trial.Notice}. A room may be a CSV log beside the trial.
 *
 * <p>A folder is read with the folders below it. The starter recipes of {@code formulations/} have
 * no history and come after the six trials of {@code formulations/garden/}, see {@link
 * starchfilm.trial.Trial#hasHistory()}. Start from {@link starchfilm.trial.NotebookReader}.
 */
@NullMarked
package starchfilm.trial;

import org.jspecify.annotations.NullMarked;
