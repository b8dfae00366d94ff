package mullwright.server;

import com.google.gson.GsonBuilder;

/** Hand-written JSON adapters for the messages that pass at every keystroke or before the first. */
final class LeanAdapters {
  private LeanAdapters() {}

  static void register(GsonBuilder gson) {
    gson.disableHtmlEscaping();
  }
}
