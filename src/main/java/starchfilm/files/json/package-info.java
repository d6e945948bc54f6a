/**
 * JSON that knows where it stands: a tree whose every value keeps its line, its column and the path
 * of its field, and file text that is refused with a reason when it cannot be such a tree.
 *
 * <p>It knows nothing of film. Sizes and depths are limited, so that no file can exhaust the
 * machine. Start from {@link starchfilm.files.json.LocatedReader}; {@link
 * starchfilm.files.json.LocatedWriter} writes such a tree, and {@link
 * starchfilm.files.json.TextEdit} changes a text in one place.
 */
@NullMarked
package starchfilm.files.json;

import org.jspecify.annotations.NullMarked;
