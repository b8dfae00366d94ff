package mullwright.server;

import com.google.gson.JsonObject;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Tells what went wrong inside the server: to the client as {@code window/logMessage}, and to
 * standard error. The same fault is told once.
 */
final class Log {
  private static final int KINDS_LIMIT = 1000;

  private static final int ERROR = 1;
  private static final int WARNING = 2;

  private final Set<String> told = ConcurrentHashMap.newKeySet();
  private final Outgoing client;

  Log(Outgoing client) {
    this.client = client;
  }

  /** A fault of the server, with what it was doing. */
  void fault(String doing, Throwable fault) {
    StackTraceElement[] way = fault.getStackTrace();
    String where = way.length == 0 ? "" : " at " + way[0];
    if (isNew(doing + fault.getClass().getName() + where)) {
      StandardError.LOGGER.log(Level.SEVERE, doing, fault);
      tell(ERROR, doing + " failed: " + fault + where + ". Other answers are not affected.");
    }
  }

  /** Something a client sent that cannot be read. */
  void unreadable(String what) {
    if (isNew(what)) {
      StandardError.LOGGER.log(Level.WARNING, what);
      tell(WARNING, what);
    }
  }

  /** Begun by the first fault: to begin logging takes a tenth of a cold start. */
  private static final class StandardError {
    static final Logger LOGGER = Logger.getLogger("mullwright.server");
  }

  private boolean isNew(String what) {
    return told.size() < KINDS_LIMIT && told.add(what);
  }

  private void tell(int type, String message) {
    JsonObject parameters = new JsonObject();
    parameters.addProperty("type", type);
    parameters.addProperty("message", message);
    client.notify("window/logMessage", parameters);
  }
}
