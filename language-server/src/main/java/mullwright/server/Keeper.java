package mullwright.server;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import mullwright.check.Finding;
import mullwright.server.kept.KeptFindings;
import mullwright.server.kept.KeptFolder;
import mullwright.workspace.Cancel;
import mullwright.workspace.Files;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;

/**
 * Keeps what was found in open documents, for servers to come: once nobody has typed for a while,
 * on a thread of its own, each content of a document once.
 */
final class Keeper {
  private static final long QUIET_MILLIS = 1000;
  private static final long LAST_WORDS_MILLIS = 2000;
  private static final List<Checked> END = List.of();

  private final Optional<KeptFolder> folder;
  private final Log log;
  private final BlockingQueue<List<Checked>> waiting = new LinkedBlockingQueue<>();
  private Map<String, WeakReference<Reading>> kept = new HashMap<>();
  private Thread thread;

  /**
   * @param folder where findings are kept, if they are
   */
  Keeper(Optional<KeptFolder> folder, Log log) {
    this.folder = folder;
    this.log = log;
  }

  /** A document as it was checked. */
  private record Checked(KeptFindings.Question question, Root root, String path, View view) {}

  /** All that is open has been checked. */
  void checked(Session session) {
    if (folder.isEmpty()) {
      return;
    }
    List<Checked> now = new ArrayList<>();
    for (Session.Open open : session.open()) {
      Root root = open.held().root();
      if (root.folder().isPresent()) {
        now.add(
            new Checked(
                Earlier.question(open.address(), root, session),
                root,
                open.held().path(),
                root.view(session.encoding())));
      }
    }
    if (now.isEmpty()) {
      return;
    }
    waiting.add(now);
    if (thread == null) {
      thread = new Thread(() -> work(session.client()), "mullwright-keeper");
      thread.setDaemon(true);
      thread.start();
    }
  }

  /** Keeps what still waits, unless that takes long. */
  void end() {
    if (thread != null) {
      waiting.add(END);
      try {
        thread.join(LAST_WORDS_MILLIS);
      } catch (InterruptedException hurried) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private void work(Client client) {
    try {
      List<Checked> next = waiting.take();
      while (next != END) {
        List<Checked> later = waiting.poll(QUIET_MILLIS, TimeUnit.MILLISECONDS);
        if (later == null || later == END) {
          keep(next, client);
          later = later == END ? END : waiting.take();
        }
        next = later;
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  private void keep(List<Checked> all, Client client) {
    Map<String, WeakReference<Reading>> now = new HashMap<>();
    for (Checked document : all) {
      try {
        Optional<Reading> reading = document.view.snapshot().reading(document.path);
        reading.ifPresent(
            it -> {
              String address = document.question.address();
              boolean known = kept.containsKey(address) && kept.get(address).get() == it;
              if (!known && it.failures(Cancel.NEVER).isEmpty()) {
                folder.orElseThrow().keep(findings(document, client));
              }
              now.put(address, new WeakReference<>(it));
            });
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        log.fault("Keeping findings", fault);
      }
    }
    kept = now;
  }

  /** What a server says that has only this document open. */
  private static KeptFindings findings(Checked document, Client client) {
    Snapshot snapshot = document.view.snapshot();
    List<KeptFindings.Source> sources = new ArrayList<>();
    for (Map.Entry<String, Files.Read> source : snapshot.standsOn(document.path).entrySet()) {
      String path = source.getKey();
      String spelled = path.equals(document.path) ? "" : document.root.spelled(path);
      sources.add(new KeptFindings.Source(path, spelled, source.getValue()));
    }
    List<KeptFindings.Published> published = new ArrayList<>();
    for (Map.Entry<String, List<Finding>> found :
        snapshot.findings(List.of(document.path), Cancel.NEVER).entrySet()) {
      document
          .view
          .document(found.getKey())
          .ifPresent(
              in ->
                  published.add(
                      new KeptFindings.Published(
                          in.address(), Diagnostics.of(in, found.getValue(), client))));
    }
    return new KeptFindings(document.question, sources, published);
  }
}
