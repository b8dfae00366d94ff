package mullwright.server;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Keeps the live view, once there is one, up to date. Until then it does nothing and loads nothing.
 *
 * <p>Used on the worker only, but for {@link #show}. A fault of the view costs the view's news, not
 * the editor's.
 */
final class Live implements LiveView.Places {
  private final Worker worker;
  private final Outgoing outgoing;
  private final Log log;
  private Session session;
  private LiveView view;
  private String address;

  Live(Worker worker, Outgoing outgoing, Log log) {
    this.worker = worker;
    this.outgoing = outgoing;
    this.log = log;
  }

  void begin(Session begun) {
    session = begun;
  }

  /**
   * Where it is to be seen; it begins when first asked for. Empty if this program has none.
   *
   * @throws UncheckedIOException if it cannot listen
   */
  Optional<String> address() {
    if (view == null) {
      LiveView found =
          ServiceLoader.load(LiveView.class, LiveView.class.getClassLoader())
              .findFirst()
              .orElse(null);
      if (found == null) {
        return Optional.empty();
      }
      try {
        address = found.begin(this);
      } catch (IOException failed) {
        throw new UncheckedIOException(failed);
      }
      view = found;
      edited();
      checked();
    }
    return Optional.of(address);
  }

  /** Texts changed. */
  void edited() {
    guarded("Drawing", () -> view.edited(open()));
  }

  /** What edits made stale is checked. */
  void checked() {
    guarded("Drawing findings", () -> view.checked(open()));
  }

  /** A request about places came: of some kinds editors send with every move of the cursor. */
  void asked(Object parameters) {
    if (view != null) {
      CursorPlace.of(parameters)
          .ifPresent(
              place ->
                  session
                      .document(place.address())
                      .ifPresent(
                          document ->
                              guarded(
                                  "Following the cursor",
                                  () -> view.cursor(document, document.offset(place.position())))));
    }
  }

  /** The talk is over. */
  void end() {
    guarded("Ending the live view", () -> view.end());
    view = null;
  }

  private void guarded(String doing, Runnable told) {
    if (view != null) {
      try {
        told.run();
      } catch (RuntimeException | StackOverflowError fault) {
        log.fault(doing, fault);
      }
    }
  }

  private List<Document> open() {
    List<Document> open = new ArrayList<>();
    Optional<Document> touched = session.touched();
    for (Session.Open each : session.open()) {
      if (touched.isEmpty() || !touched.get().address().equals(each.address())) {
        session.document(each.address()).ifPresent(open::add);
      }
    }
    touched.ifPresent(open::add);
    return open;
  }

  @Override
  public boolean canShow() {
    return session.client().can(Window.SHOWS);
  }

  @Override
  public void show(String beside, String path, int start, int end) {
    worker.ask(
        () -> {
          try {
            session
                .document(beside)
                .flatMap(document -> document.view().document(path))
                .ifPresent(document -> show(document, start, end));
          } catch (RuntimeException fault) {
            log.fault("Showing a place", fault);
          }
        });
  }

  private void show(Document document, int start, int end) {
    new Window(outgoing)
        .show(document.address(), document.range(start, end))
        .whenComplete(this::shown);
  }

  private void shown(Object answer, Throwable refused) {
    if (refused != null) {
      log.unreadable("The editor does not go to a place: " + refused.getMessage());
    }
  }
}
