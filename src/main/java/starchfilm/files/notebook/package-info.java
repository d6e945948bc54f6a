/**
 * Reads trial files, and folders of them, into a notebook: tolerantly, and with precise complaints.
 *
 * <p>One JSON file a trial. The keys of a file carry their unit; what comes out is SI. An amount
 * may be a number, a range {@code {"from": 5, "to": 7}} or {@code "unknown"}; a field may be left
 * out. Only what is impossible is a {@link starchfilm.files.findings.Fault}, with its place and the
 * way to mend it; what is merely odd is a {@link starchfilm.files.findings.Notice}. A room may be a
 * CSV log beside the trial.
 *
 * <p>A folder is read with the folders below it. The starter recipes of {@code formulations/} have
 * no history and come after the six trials of {@code formulations/garden/}. Start from {@link
 * starchfilm.files.notebook.NotebookReader}; one file is read by {@code TrialReader}, a part of it
 * by the reader of that name.
 */
@NullMarked
package starchfilm.files.notebook;

import org.jspecify.annotations.NullMarked;
