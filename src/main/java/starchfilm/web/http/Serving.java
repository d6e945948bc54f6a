package starchfilm.web.http;

import java.util.Optional;
import java.util.function.Consumer;

/**
 * How pages are served.
 *
 * @param port the port; 0 for any free one
 * @param lan true where other devices on the network are let in, each with a key
 * @param newKey takes each key for a device as it is made; with {@code lan} only
 * @param ownLink takes each address with a key in it that lets in a browser of this machine, as it
 *     is made; empty where every user of this machine is let in without one
 * @param troubles takes what went wrong in the program itself
 */
public record Serving(
    int port,
    boolean lan,
    Consumer<String> newKey,
    Optional<Consumer<String>> ownLink,
    Consumer<Throwable> troubles) {}
