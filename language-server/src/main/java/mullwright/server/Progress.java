package mullwright.server;

import com.google.gson.JsonObject;

/**
 * Tells the editor how far long work has come, and hears from it that it is to stop (LSP 3.17,
 * "Work Done Progress").
 *
 * <p>Work the editor asked for carries its own token. For other work a token is made, and nothing
 * is told before the editor has taken it.
 */
public final class Progress {
  private final Editor editor;
  private final Object token;
  private final String title;
  private final Runnable atEnd;
  private volatile boolean taken;
  private volatile boolean cancelled;
  private boolean begun;
  private int lastPercent = -1;

  Progress(Editor editor, Object token, String title, Runnable atEnd) {
    this.editor = editor;
    this.token = token;
    this.title = title;
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
   * Tells how far it is; steps that change no percent are not told.
   *
   * @param what is worked on now
   */
  public void report(int done, int all, String what) {
    int percent = all == 0 ? 100 : (int) (100L * done / all);
    if (!taken || percent == lastPercent) {
      return;
    }
    lastPercent = percent;
    JsonObject value = kind(begun ? "report" : "begin");
    if (!begun) {
      value.addProperty("title", title);
      begun = true;
    }
    value.addProperty("cancellable", true);
    value.addProperty("message", what);
    value.addProperty("percentage", percent);
    tell(value);
  }

  /** The work is done, or given up. */
  public void end() {
    if (begun) {
      tell(kind("end"));
    }
    atEnd.run();
  }

  private static JsonObject kind(String kind) {
    JsonObject value = new JsonObject();
    value.addProperty("kind", kind);
    return value;
  }

  private void tell(JsonObject value) {
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
