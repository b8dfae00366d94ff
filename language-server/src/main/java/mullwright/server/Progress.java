package mullwright.server;

import com.google.gson.JsonObject;
import java.util.function.LongSupplier;
import mullwright.workspace.Cancel;

/**
 * Tells the editor how far long work has come, and hears from it that it is to stop (LSP 3.17,
 * "Work Done Progress").
 *
 * <p>Work the editor asked for with a token of its own is told under that. For other work a token
 * is made once the work has gone on for a while, and nothing is told before the editor has taken
 * it: what is over at once is never told. Work may go on in several threads at once; how far it is
 * one of them tells.
 */
public final class Progress {
  /** Work shorter than this is told to nobody who did not ask, in nanoseconds. */
  static final long A_WHILE = 300_000_000;

  private final Editor editor;
  private final Object token;
  private final String title;
  private final LongSupplier clock;
  private final Runnable atEnd;
  private volatile Runnable ask;
  private long since;
  private volatile boolean taken;
  private volatile boolean cancelled;
  private volatile boolean started;
  private volatile boolean begun;
  private boolean told;
  private volatile boolean ended;
  private int lastPercent = -1;

  /**
   * @param ask asks the editor to take the token; null if it is the editor's own
   * @param clock nanoseconds
   */
  Progress(
      Editor editor, Object token, String title, Runnable ask, LongSupplier clock, Runnable atEnd) {
    this.editor = editor;
    this.token = token;
    this.title = title;
    this.ask = ask;
    this.taken = ask == null;
    this.clock = clock;
    this.atEnd = atEnd;
  }

  /** The editor knows the token. */
  void taken() {
    taken = true;
  }

  /** The editor wants the work to stop. */
  void cancel() {
    cancelled = true;
  }

  /** True once the editor wants the work to stop. */
  public boolean cancelled() {
    return cancelled;
  }

  /**
   * That token for the work; heard also when the editor wants the work to stop; asking tells it
   * goes on.
   */
  public Cancel over(Cancel cancel) {
    return () -> {
      goesOn();
      return cancelled || cancel.asked();
    };
  }

  /** The work goes on; nobody knows how far it is. */
  void goesOn() {
    if (ready() && !begun) {
      beginOnce();
    }
  }

  private synchronized void beginOnce() {
    if (!begun) {
      tell(begin());
    }
  }

  /**
   * Tells how far it is; steps that change no percent are not told.
   *
   * @param what is worked on now
   */
  public synchronized void report(int done, int all, String what) {
    int percent = all == 0 ? 100 : (int) (100L * done / all);
    if (!ready() || percent == lastPercent) {
      return;
    }
    lastPercent = percent;
    JsonObject value = begun ? kind("report") : begin();
    value.addProperty("cancellable", true);
    value.addProperty("message", what);
    value.addProperty("percentage", percent);
    tell(value);
  }

  /** True once something may be told. */
  private boolean ready() {
    if (ask != null && !ended) {
      long now = clock.getAsLong();
      if (!started) {
        since = now;
        started = true;
      }
      if (now - since >= A_WHILE) {
        askOnce();
      }
    }
    return taken;
  }

  private synchronized void askOnce() {
    if (ask != null) {
      ask.run();
      ask = null;
    }
  }

  private JsonObject begin() {
    JsonObject value = kind("begin");
    value.addProperty("title", title);
    value.addProperty("cancellable", true);
    begun = true;
    return value;
  }

  /**
   * The work is done, or given up; on any thread. Nothing is told after it, even if the work has
   * not heard yet that it is given up.
   */
  public void end() {
    synchronized (this) {
      if (told && !ended) {
        send(kind("end"));
      }
      ended = true;
    }
    atEnd.run();
  }

  private static JsonObject kind(String kind) {
    JsonObject value = new JsonObject();
    value.addProperty("kind", kind);
    return value;
  }

  private synchronized void tell(JsonObject value) {
    if (!ended) {
      told = true;
      send(value);
    }
  }

  private void send(JsonObject value) {
    JsonObject parameters = new JsonObject();
    if (token instanceof Number number) {
      parameters.addProperty("token", number);
    } else {
      parameters.addProperty("token", token.toString());
    }
    parameters.add("value", value);
    editor.notify("$/progress", parameters);
  }
}
