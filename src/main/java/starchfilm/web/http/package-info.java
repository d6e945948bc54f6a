/**
 * Serving pages to a browser on this machine: routes, forms, and what is refused.
 *
 * <p>Knows nothing of starch. Start from {@link starchfilm.web.http.PageServer}; what a page needs
 * are {@link starchfilm.web.http.Request}, {@link starchfilm.web.http.Response} and {@link
 * starchfilm.web.http.HttpError}.
 */
@NullMarked
package starchfilm.web.http;

import org.jspecify.annotations.NullMarked;
