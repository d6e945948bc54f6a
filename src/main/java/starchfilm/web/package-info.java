/**
 * The program as pages on this machine.
 *
 * <p>Holds no computation: forms are read, the rooms below are asked as the commands ask them, and
 * what comes back is shown by {@code starchfilm.report}'s view models. Start from {@link
 * starchfilm.web.NotebookSite}, whose table of routes names every page.
 */
@NullMarked
package starchfilm.web;

import org.jspecify.annotations.NullMarked;
