package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.jsoup.Jsoup;

/**
 * Four readers of one notebook at once, on one trial mostly, who take forms from the pages and send
 * them back filled in, until the program is killed: one weighs and notes faults, one edits, one
 * keeps photos, one starts new trials and learns.
 */
final class BusyReaders {
  static final String FILE = DryingTrial.FILE;
  static final String NEW_TRIAL = "Once more ";

  private static final LocalDateTime POURED = LocalDateTime.parse("2024-04-19T10:00");
  private static final int CONFLICT = 409;
  private static final int SEE_OTHER = 303;

  final Promises weighings = new Promises();
  final Promises faults = new Promises();
  final Promises edits = new Promises();
  final Promises photos = new Promises();
  final Promises trials = new Promises();

  private final AtomicInteger number = new AtomicInteger();
  private final AtomicInteger answers = new AtomicInteger();
  private final List<Throwable> troubles = new CopyOnWriteArrayList<>();
  private final List<Thread> hands = new ArrayList<>();
  private volatile boolean learnt;

  /** The trial they work on, poured long ago by every clock. */
  static String trialText() {
    return DryingTrial.textNamed("On the shelf").replace("2026-04-19T10:00", POURED.toString());
  }

  /** Begins to work. */
  void start(PageClient visitor, long seed) {
    hands.clear();
    answers.set(0);
    hand(visitor, new Random(seed), random -> weighOrNoteAFault(visitor, random));
    hand(visitor, new Random(seed + 1), random -> edit(visitor, random));
    hand(visitor, new Random(seed + 2), random -> keepAPhoto(visitor));
    hand(visitor, new Random(seed + 3), random -> startATrialOrLearn(visitor, random));
  }

  /** How many forms were answered since the start. */
  int answers() {
    assertThat(troubles).isEmpty();
    assertThat(hands).allMatch(Thread::isAlive);
    return answers.get();
  }

  /** Waits until all have noticed that the program is gone. */
  void stop() throws InterruptedException {
    for (Thread hand : hands) {
      hand.join();
    }
    assertThat(troubles).isEmpty();
  }

  boolean hasLearnt() {
    return learnt;
  }

  int saved() {
    return weighings.count() + faults.count() + edits.count() + photos.count() + trials.count();
  }

  /** A picture with its number in it, long enough to be cut. */
  static byte[] photo(int number) {
    byte[] line = ("photo " + number + "\n").getBytes(StandardCharsets.UTF_8);
    byte[] photo = Arrays.copyOf(PageClient.PIXEL, PageClient.PIXEL.length + 20_000 * line.length);
    for (int at = PageClient.PIXEL.length; at < photo.length; at += line.length) {
      System.arraycopy(line, 0, photo, at, line.length);
    }
    return photo;
  }

  private void hand(PageClient visitor, Random random, Consumer<Random> work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                while (true) {
                  work.accept(random);
                }
              } catch (UncheckedIOException killed) {
                // The kill ends the work; but an answer that never came is a fault.
                if (killed.getCause() instanceof HttpTimeoutException) {
                  troubles.add(killed);
                }
              } catch (Throwable fault) {
                troubles.add(fault);
              }
            },
            "reader of " + visitor.uri("/"));
    hands.add(thread);
    thread.start();
  }

  private void weighOrNoteAFault(PageClient visitor, Random random) {
    int n = number.incrementAndGet();
    // Any form of ours carries what marks it as ours; this page has no forecast to wait for.
    String page = visitor.get("/trial/edit?file=" + FILE).body();
    if (random.nextInt(3) == 0) {
      String remark = "seen " + n;
      faults.sent(remark);
      saved(
          faults,
          visitor,
          post(visitor, page, "/trial/note", "kind", "fault", "what", "bubbles", "remark", remark));
    } else {
      // Lighter by a tenth of a gram a minute, so that each has its place.
      String mass = (7_400 - n) / 10 + "." + (7_400 - n) % 10;
      weighings.sent(mass);
      String where = random.nextBoolean() ? "/trial/note" : "/plates/weigh";
      String at = POURED.plusMinutes(n).toString();
      saved(
          weighings,
          visitor,
          post(visitor, page, where, "kind", "weighed", "mass", mass, "at", at));
    }
  }

  private void edit(PageClient visitor, Random random) {
    // Each edit has a figure of its own, and each is water that makes a paste.
    String water = String.format(Locale.ROOT, "300.%05d1", number.incrementAndGet());
    if (random.nextInt(3) == 0) {
      String page = visitor.get("/trial/text?file=" + FILE).body();
      String text = Jsoup.parse(page).select("textarea").first().wholeText();
      String edited = text.replaceFirst("(\"water\": \\{\"mass_g\": )[0-9.]+", "$1" + water);
      edits.sent(water);
      savedUnlessChanged(visitor, post(visitor, page, "/trial/text", "text", edited));
    } else {
      String page = visitor.get("/trial/edit?file=" + FILE).body();
      edits.sent(water);
      savedUnlessChanged(
          visitor, post(visitor, page, "/trial/edit", "f.recipe.water.mass_g", water));
    }
  }

  private void savedUnlessChanged(PageClient visitor, HttpResponse<String> answer) {
    if (answer.statusCode() == CONFLICT) {
      edits.answered(false);
    } else {
      saved(edits, visitor, answer);
    }
  }

  private void keepAPhoto(PageClient visitor) {
    int n = number.incrementAndGet();
    String token = visitor.token();
    photos.sent(String.valueOf(n));
    saved(photos, visitor, visitor.postPhoto(FILE, token, "from my phone.png", photo(n)));
  }

  private void startATrialOrLearn(PageClient visitor, Random random) {
    String page = visitor.get("/trial/edit?file=" + FILE).body();
    if (random.nextInt(3) > 0) {
      String name = NEW_TRIAL + number.incrementAndGet();
      trials.sent(name);
      saved(trials, visitor, post(visitor, page, "/trial/again", "name", name));
      return;
    }
    HttpResponse<String> answer = post(visitor, page, "/learn");
    while (answer.statusCode() == 200) {
      answer = visitor.get("/learnt/working");
    }
    requireSaved(answer);
    learnt = true;
    answers.incrementAndGet();
  }

  /** Fills in a form with what its page hides in it. */
  private static HttpResponse<String> post(
      PageClient visitor, String page, String path, String... typed) {
    List<String> fields = new ArrayList<>(List.of("file", FILE));
    for (String hidden : List.of("token", "form", "version")) {
      fields.addAll(List.of(hidden, PageClient.hidden(page, hidden)));
    }
    fields.addAll(List.of(typed));
    return visitor.postBare(path, List.of(), fields.toArray(String[]::new));
  }

  private void saved(Promises promises, PageClient visitor, HttpResponse<String> answer) {
    requireSaved(answer);
    promises.answered(true);
    // Now and then the browser gets as far as the page it is sent on to, which starts a forecast.
    if (answers.incrementAndGet() % 8 == 0) {
      visitor.get(answer.headers().firstValue("Location").orElseThrow());
    }
  }

  private static void requireSaved(HttpResponse<String> answer) {
    assertThat(answer.statusCode())
        .as(() -> Jsoup.parse(answer.body()).select(".refusal, .why, .headline").text())
        .isEqualTo(SEE_OTHER);
  }
}
