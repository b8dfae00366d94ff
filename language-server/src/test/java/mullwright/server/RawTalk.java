package mullwright.server;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A talk with a server byte by byte, for what no client library would send. */
final class RawTalk {
  static final String INITIALIZE =
      "{'jsonrpc':'2.0','id':1,'method':'initialize','params':{'capabilities':{}}}";

  private static final long PATIENCE_SECONDS = Long.getLong("patience", 30);

  final CompletableFuture<Integer> exitCode;
  private final OutputStream to;
  private final BlockingQueue<JsonObject> heard = new LinkedBlockingQueue<>();
  private final CompletableFuture<Void> allHeard;

  /** A server in this process. */
  RawTalk() {
    BytePipe toServer = new BytePipe();
    BytePipe toClient = new BytePipe();
    to = toServer.in;
    exitCode =
        CompletableFuture.supplyAsync(
            () -> {
              int code = ServeMain.run(toServer.out, toClient.in);
              close(toClient.in);
              return code;
            },
            task -> new Thread(task, "raw-server").start());
    allHeard = hear(toClient.out);
  }

  /** A server in a process of its own. */
  RawTalk(Process process) {
    to = process.getOutputStream();
    exitCode = process.onExit().thenApply(Process::exitValue);
    allHeard = hear(process.getInputStream());
  }

  private CompletableFuture<Void> hear(InputStream from) {
    return CompletableFuture.runAsync(
        () -> {
          try {
            for (String frame = frame(from); frame != null; frame = frame(from)) {
              heard.add(JsonParser.parseString(frame).getAsJsonObject());
            }
          } catch (IOException failed) {
            throw new UncheckedIOException(failed);
          }
        },
        task -> new Thread(task, "raw-client").start());
  }

  /** The next message, null at the end; anything that is none fails. */
  private static String frame(InputStream from) throws IOException {
    StringBuilder header = new StringBuilder();
    while (!header.toString().endsWith("\r\n\r\n")) {
      int read = from.read();
      if (read < 0) {
        if (header.length() > 0) {
          throw new IOException("the server wrote what is no message: " + header);
        }
        return null;
      }
      header.append((char) read);
      if (header.length() > 1000) {
        throw new IOException("the server wrote what is no message: " + header);
      }
    }
    if (!header.toString().matches("Content-Length: \\d+\r\n\r\n")) {
      throw new IOException("no header of a message: " + header);
    }
    int length = Integer.parseInt(header.toString().replaceAll("\\D", ""));
    byte[] body = from.readNBytes(length);
    if (body.length < length) {
      throw new IOException("half a message");
    }
    return new String(body, StandardCharsets.UTF_8);
  }

  /** Sends bytes as they are. */
  RawTalk raw(byte[] bytes) {
    try {
      to.write(bytes);
      to.flush();
    } catch (IOException closed) {
      throw new UncheckedIOException(closed);
    }
    return this;
  }

  RawTalk raw(String text) {
    return raw(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Sends a body with its header; single quotes stand for double ones. */
  RawTalk say(String body) {
    byte[] bytes = body.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    return raw("Content-Length: " + bytes.length + "\r\n\r\n").raw(bytes);
  }

  /** Sends a message. */
  RawTalk say(JsonObject message) {
    byte[] bytes = message.toString().getBytes(StandardCharsets.UTF_8);
    return raw("Content-Length: " + bytes.length + "\r\n\r\n").raw(bytes);
  }

  void hangUp() {
    close(to);
  }

  private static void close(OutputStream stream) {
    try {
      stream.close();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** The next message of the server, whatever it is. */
  JsonObject next() {
    try {
      JsonObject next = heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
      if (next == null) {
        if (allHeard.isDone()) {
          // what made it end
          allHeard.join();
        }
        throw new AssertionError("the server says nothing");
      }
      return next;
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  /** The answer to that id; what comes before it is passed over. */
  JsonObject answer(int id) {
    while (true) {
      JsonObject next = next();
      boolean answer = next.has("id") && !next.has("method") && !next.get("id").isJsonNull();
      if (answer && next.get("id").getAsString().equals(Integer.toString(id))) {
        return next;
      }
    }
  }

  private static <T> T await(CompletableFuture<T> answer) {
    return answer.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
  }

  /** The exit code; fails if the server wrote anything but messages. */
  int end() {
    int code = await(exitCode);
    await(allHeard);
    return code;
  }
}
