package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Long work shows how far it is and can be stopped. */
@ExtendWith(Chrome.class)
class LongWorkTest {
  @TempDir private Path folder;
  private final Semaphore allowed = new Semaphore(0);
  private final AtomicInteger begun = new AtomicInteger();
  private RunningSite site;

  /** Every forecast and every learning waits until it is allowed. */
  @BeforeEach
  void start() throws IOException {
    RunningSite.copyGarden(folder);
    Files.delete(folder.resolve("workshop.json"));
    site =
        RunningSite.over(
            folder,
            () -> {
              begun.incrementAndGet();
              allowed.acquireUninterruptibly();
            });
  }

  @AfterEach
  void stop() {
    allowed.release(1000);
    site.close();
  }

  @Test
  void showsHowFarItIsAndGoesOnByItself(@Chrome.WithoutScript Window window) {
    window.open(site, "/compare/choice?tick=all");
    window.button("Compare").click();
    window.awaitText("0 of 6 trials are forecast");
    window.checks().assertFits();
    allowed.release(2);
    window.awaitText("2 of 6 trials are forecast");
    allowed.release(4);
    window.awaitText("Six trials, side by side");
  }

  @Test
  void endsWhenItIsStopped(Window window) throws InterruptedException {
    window.open(site, "/compare/choice?tick=all");
    window.button("Compare").click();
    window.awaitText("0 of 6 trials are forecast");
    window.checks().assertAccessible();
    window.picture("working");
    window.sendFromAChangingPage("Stop this");
    window.awaitHeading("Compare");
    int before = begun.get();
    allowed.release(1000);

    Thread.sleep(300);
    assertThat(begun.get()).isEqualTo(before).isLessThan(6);
    window.link("all").click();
    window.awaitHeading("Compare");
    window.button("Compare").click();
    window.awaitText("Six trials, side by side");
  }

  @Test
  void learningThatIsStoppedWritesNothing(Window window) {
    window.open(site, "/learnt");
    window.send("Learn from the trials");
    window.awaitHeading("Learning");
    window.checks().assertAccessible();
    window.picture("learning");
    window.sendFromAChangingPage("Stop this");
    window.awaitText("Stopped; nothing was learnt.");
    assertThat(folder.resolve("workshop.json")).doesNotExist();
    allowed.release(1000);

    window.send("Learn from the trials");
    window.awaitText("Learnt; every forecast from now on uses it.");
    assertThat(begun).hasValue(2);
    assertThat(folder.resolve("workshop.json")).exists();
  }

  @Test
  void otherPagesAnswerMeanwhile() {
    assertThat(site.get("/compare/page?trial=4-blend.json").body())
        .contains("The trial is being forecast");
    assertThat(site.get("/trials").statusCode()).isEqualTo(200);
    assertThat(site.get("/trial?file=4-blend.json").body()).contains("The forecast is being made");
  }
}
