package starchfilm.web;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import starchfilm.files.notebook.KeptReadings;
import starchfilm.learning.Workshops;
import starchfilm.report.PageRenderer;
import starchfilm.report.caution.Cautions;
import starchfilm.web.http.CsrfFields;
import starchfilm.web.http.PageServer;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;
import starchfilm.web.http.Serving;
import starchfilm.web.http.Site;
import starchfilm.web.work.Workbench;

/** All pages over one notebook folder, served until somebody stops them. */
public final class NotebookSite implements AutoCloseable {
  private final Workbench bench;
  private final CountDownLatch stopAsked = new CountDownLatch(1);
  private final PageServer server;

  /**
   * Starts serving.
   *
   * @param serving port and reach
   * @param folder the notebook's folder
   * @param clock the clock on the wall, in the reader's zone
   * @param workshops what was learnt from the trials of the folder
   * @throws java.net.BindException where another program has the port
   * @throws IOException where the system gives no port
   */
  public NotebookSite(Serving serving, Path folder, Clock clock, Workshops workshops)
      throws IOException {
    bench = new Workbench(workshops);
    NotebookFolder notebook = new NotebookFolder(folder, new KeptReadings());
    server = PageServer.start(serving, seal -> site(notebook, clock, workshops, seal));
  }

  private Site site(NotebookFolder folder, Clock clock, Workshops workshops, CsrfFields seal) {
    PageRenderer renderer = new PageRenderer();
    PageContext desk =
        new PageContext(
            folder,
            clock,
            workshops,
            bench,
            renderer,
            Assets.load(renderer),
            seal,
            new FlashMessages(),
            new OwnSaves());
    Routes table = new Routes();
    new TrialsPage(desk).addTo(table);
    new TodayPage(desk).addTo(table);
    new TrialPage(desk).addTo(table);
    new FieldsPage(desk).addTo(table);
    new TextPage(desk).addTo(table);
    new PrintPage(desk).addTo(table);
    new RoomPage(desk).addTo(table);
    new JarPage(desk).addTo(table);
    new WishesPage(desk).addTo(table);
    new PlanPage(desk).addTo(table);
    new ThicknessPage(desk).addTo(table);
    new PlatesPage(desk).addTo(table);
    new ComparePage(desk).addTo(table);
    new LearnPage(desk).addTo(table);
    new CopyPage(desk).addTo(table);
    desk.assets().addTo(table);
    table.read("/care", request -> desk.page("care", "", Map.of("cautions", Cautions.general())));
    table.send(
        "/stop",
        request -> {
          Response goodbye = desk.page("stopped", "", Map.of());
          stopAsked.countDown();
          return goodbye;
        });
    return new Site(table, desk);
  }

  /**
   * Where the pages are.
   *
   * @return the server
   */
  public PageServer server() {
    return server;
  }

  /**
   * Waits until a reader asks on the page to stop.
   *
   * @throws InterruptedException where the wait is broken off
   */
  public void awaitStop() throws InterruptedException {
    stopAsked.await();
  }

  /** Lets what is being saved end, and stops. */
  @Override
  public void close() {
    server.close();
    bench.close();
  }
}
