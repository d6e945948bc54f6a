package starchfilm.web.http;

import java.util.function.Consumer;

/**
 * How pages are served.
 *
 * @param port the port; 0 for any free one
 * @param lan true where other devices on the network are let in, each with a key
 * @param newKey takes each key as it is made; with {@code lan} only
 * @param troubles takes what went wrong in the program itself
 */
public record Serving(
    int port, boolean lan, Consumer<String> newKey, Consumer<Throwable> troubles) {}
