package mullwright.server;

import java.util.Queue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The one thread that computes: takes jobs in the order they came and, between them, brings up to
 * date what edits made stale.
 *
 * <p>Edits that wait are applied one after the other before anything is computed for them, so a
 * burst of typing costs one check. There is no timer. An edit is known to {@link #editWaits} from
 * the moment the reader hands it over, which is how a running computation learns that it is stale.
 */
final class Worker {
  /** So many answers may go before what edits made stale; then it is due. */
  private static final int PATIENCE = 16;

  private static final long LAST_WORDS_MILLIS = 2000;

  private static final Runnable NOTHING = () -> {};

  private final BlockingQueue<Runnable> jobs = new LinkedBlockingQueue<>();
  private final Queue<Runnable> idle = new ConcurrentLinkedQueue<>();
  private final AtomicInteger editsWaiting = new AtomicInteger();
  private final Upkeep upkeep;
  private final Runnable atBreak;
  private final Thread thread;
  private volatile boolean open = true;

  /** Made and used by the thread only. */
  private ExecutorService beside;

  /** What is done between jobs. */
  interface Upkeep {
    /** True if {@link #run} has something to do. */
    boolean due();

    /** Does it; gives up early, and stays due, once {@link Worker#editWaits}. */
    void run();
  }

  /**
   * @param atBreak called if the thread breaks: nothing is answered after that
   */
  Worker(Upkeep upkeep, Runnable atBreak) {
    this.upkeep = upkeep;
    this.atBreak = atBreak;
    this.thread = new Thread(this::work, "mullwright-worker");
    thread.setDaemon(true);
  }

  void start() {
    thread.start();
  }

  /** Queues a job that changes a text. Jobs must not throw. */
  void edit(Runnable job) {
    editsWaiting.incrementAndGet();
    jobs.add(
        () -> {
          editsWaiting.decrementAndGet();
          job.run();
        });
  }

  /** Queues a job that changes nothing. Jobs must not throw. */
  void ask(Runnable job) {
    jobs.add(job);
  }

  /** Queues a job that everything else goes before. Jobs must not throw. */
  void whenIdle(Runnable job) {
    idle.add(job);
    // wakes the thread up
    jobs.add(NOTHING);
  }

  /** Runs a job on a thread beside this one, after those given before. Jobs must not throw. */
  void beside(Runnable job) {
    if (beside == null) {
      beside =
          Executors.newSingleThreadExecutor(
              task -> {
                Thread thread = new Thread(task, "mullwright-schedules");
                thread.setDaemon(true);
                return thread;
              });
    }
    beside.execute(job);
  }

  /** True if somebody waits for an answer, or for an edit to be applied. */
  boolean someoneWaits() {
    return !jobs.isEmpty();
  }

  /** True if an edit has come that is not yet applied. */
  boolean editWaits() {
    return editsWaiting() > 0;
  }

  /** How many edits have come that are not yet applied. */
  int editsWaiting() {
    return editsWaiting.get();
  }

  /** Ends the thread after the jobs that wait, or soon if they take long. */
  void end() {
    jobs.add(() -> open = false);
    try {
      thread.join(LAST_WORDS_MILLIS);
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
    open = false;
  }

  private void work() {
    int answered = 0;
    try {
      while (open) {
        boolean mayRun = upkeep.due() && !editWaits() && (jobs.isEmpty() || answered >= PATIENCE);
        if (mayRun) {
          upkeep.run();
          answered = 0;
        } else {
          boolean kept = upkeep.due();
          next().run();
          answered = kept ? answered + 1 : 0;
        }
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    } finally {
      if (open) {
        atBreak.run();
      }
    }
  }

  private Runnable next() throws InterruptedException {
    Runnable job = jobs.poll();
    while (job == NOTHING) {
      job = jobs.poll();
    }
    if (job == null && upkeep.due() && !editWaits()) {
      return NOTHING;
    }
    if (job == null) {
      job = idle.poll();
    }
    return job == null ? jobs.take() : job;
  }
}
