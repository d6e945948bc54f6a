package starchfilm.cli;

import java.io.IOException;
import java.net.BindException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import starchfilm.learning.Workshops;
import starchfilm.web.NotebookSite;
import starchfilm.web.http.PageServer;
import starchfilm.web.http.Serving;

/** Opens the pages of a folder in the browser. */
record OpenCommand(Asked asked) implements Callable<Integer> {
  private static final String ANY_USER = "open.any-user";
  private static final int MOST_PORT = 65_535;

  @Override
  public Integer call() throws InterruptedException {
    Path folder = asked.path("served.folder").orElse(Path.of("."));
    Path root = asked.resolve(folder);
    if (!Files.isDirectory(root)) {
      throw CommandFailure.wrongInput(
          folder + ": there is no such folder; make it, or name the folder of your trials.");
    }
    try (NotebookSite site = start(root)) {
      Thread atEnd = new Thread(site::close, "stop");
      Runtime.getRuntime().addShutdownHook(atEnd);
      String address = site.server().address();
      Optional<String> key = say(root, site.server());
      Optional<Path> slip = Optional.empty();
      if (!asked.has("open.no-open")) {
        slip = key.flatMap(own -> KeySlip.of(address, own));
        if (!Browser.open(slip.map(Path::toString).orElse(address))) {
          print("No browser could be opened; open that address in one yourself.");
        }
      }
      site.awaitStop();
      KeySlip.remove(slip);
      Runtime.getRuntime().removeShutdownHook(atEnd);
    }
    print("Stopped; everything is saved.");
    return ExitCodes.DONE;
  }

  private int port() {
    String typed = asked.word("open.port").orElse("0");
    if (!typed.matches("[0-9]{1,5}") || Integer.parseInt(typed) > MOST_PORT) {
      throw CommandFailure.wrongInput(
          "--port: " + typed + " given, allowed 1 to 65535; leave it out for any free one.");
    }
    return Integer.parseInt(typed);
  }

  private NotebookSite start(Path root) {
    int port = port();
    boolean shareOnLan = asked.has("open.share-on-lan");
    boolean anyUser = asked.has(ANY_USER);
    Serving serving =
        new Serving(
            port,
            shareOnLan,
            this::sayKey,
            anyUser ? Optional.empty() : Optional.of(this::sayOwnLink),
            this::sayTrouble);
    try {
      return new NotebookSite(serving, root, asked.clock(), new Workshops(asked.clock()));
    } catch (BindException taken) {
      throw CommandFailure.notComputed(
          "--port: %s is used by another program, or not allowed; leave --port out to get a free one."
              .formatted(port));
    } catch (IOException failure) {
      throw CommandFailure.notComputed(
          "the page could not be opened: " + failure.getMessage() + ".");
    }
  }

  /** Says where the pages are; gives the key for the first browser, where one is needed. */
  private Optional<String> say(Path root, PageServer server) {
    print("The trials in " + root.toAbsolutePath().normalize() + " are open at");
    print("  " + server.address());
    Optional<String> key = server.showOwnKey();
    for (String address : server.addressesForOthers()) {
      print("and for other devices of this network, with the key below, at");
      print("  " + address);
    }
    if (asked.has("open.share-on-lan")) {
      print("What other devices send is not encrypted: share it only on a network you trust.");
      server.showKey();
    } else {
      print(
          asked.has(ANY_USER)
              ? "Only this machine can reach it, but every user of this machine can."
              : "Only this machine can reach it, and only with a key.");
    }
    print("Stop it on the page, or with Ctrl+C here.");
    return key;
  }

  private void sayKey(String key) {
    print("Key for one device: " + key + " (open the address with ?key=" + key + " behind it)");
  }

  /** The key is printed for its owner's eyes, never passed in a command. */
  private void sayOwnLink(String link) {
    print("for the next browser, once: " + link);
  }

  private void sayTrouble(Throwable trouble) {
    asked.err().println("starchfilm: the program itself failed (" + trouble + ").");
  }

  private void print(String line) {
    asked.out().println(line);
  }
}
