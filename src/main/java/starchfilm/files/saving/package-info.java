/**
 * Puts notes, photos, corrected fields and new trials into the files of a notebook, without losing
 * what the program does not know.
 *
 * <p>What would be written is first read as every trial is, and refused where that finds a new
 * fault ({@link starchfilm.files.saving.NotWrittenException}). Then {@link
 * starchfilm.files.saving.SafeFile} replaces the file, so that a kill or a power cut leaves the old
 * or the new one whole. Start from {@link starchfilm.files.saving.NoteWriter} for a note, {@link
 * starchfilm.files.saving.FieldEdit} for a field, {@link starchfilm.files.saving.TrialFileText} for
 * a whole text or a new file.
 */
@NullMarked
package starchfilm.files.saving;

import org.jspecify.annotations.NullMarked;
