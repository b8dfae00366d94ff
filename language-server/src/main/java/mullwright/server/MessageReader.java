package mullwright.server;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.MessageIssueException;
import org.eclipse.lsp4j.jsonrpc.MessageIssueHandler;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;

/**
 * Reads messages, each after a header that says how long it is (LSP 3.17, "Base Protocol"). What
 * cannot be read is told once and passed over.
 */
final class MessageReader {
  /** The longest message that is read, in bytes: a text of the size limit, all of it escaped. */
  static final int LIMIT = 64 << 20;

  /** The longest line of a header that is looked at, in letters. */
  private static final int HEADER_LIMIT = 1 << 12;

  private static final String LENGTH = "Content-Length";
  private static final int NONE = -1;
  private static final int CHUNK = 1 << 13;

  private final InputStream in;
  private final MessageJsonHandler json;
  private final Log log;
  private volatile boolean listening;

  MessageReader(InputStream in, MessageJsonHandler json, Log log) {
    this.in = in;
    this.json = json;
    this.log = log;
  }

  /** Stops reading after the message in hand. */
  void close() {
    listening = false;
  }

  /** Reads messages and hands them on until the input ends or {@link #close} is called. */
  <P extends MessageConsumer & MessageIssueHandler> void listen(P peer) {
    listening = true;
    try {
      while (listening) {
        int length = header();
        if (length == NONE) {
          return;
        }
        message(length, peer);
      }
    } catch (IOException gone) {
      if (listening) {
        log.unreadable("The input has failed: " + gone.getMessage());
      }
    }
  }

  /** The length a header announces; {@link #NONE} if the input ends. */
  private int header() throws IOException {
    int length = NONE;
    boolean any = false;
    StringBuilder line = new StringBuilder();
    while (true) {
      int letter = in.read();
      if (letter < 0) {
        return NONE;
      }
      if (letter != '\n') {
        if (letter != '\r' && line.length() < HEADER_LIMIT) {
          line.append((char) letter);
        }
      } else if (!line.isEmpty()) {
        any = true;
        length = Math.max(length, length(line.toString()));
        line.setLength(0);
      } else if (length != NONE) {
        return length;
      } else if (any) {
        log.unreadable("A header says no length and is passed over.");
        any = false;
      }
    }
  }

  /** Header names are read in any case; what else a header says is of no use here. */
  private int length(String line) {
    int colon = line.indexOf(':');
    if (colon < 0 || !line.substring(0, colon).strip().equalsIgnoreCase(LENGTH)) {
      return NONE;
    }
    String digits = line.substring(colon + 1).strip();
    long length = digits.isEmpty() ? NONE : 0;
    for (int i = 0; i < digits.length() && length != NONE; i++) {
      char c = digits.charAt(i);
      length = c < '0' || c > '9' ? NONE : Math.min(Integer.MAX_VALUE, 10 * length + (c - '0'));
    }
    if (length == NONE) {
      log.unreadable("A header is no length and is passed over: '" + shortened(line) + "'.");
    } else if (length > LIMIT) {
      log.unreadable(
          "A message of "
              + shortened(digits)
              + " bytes is announced; it is passed over, since the limit is "
              + LIMIT
              + ".");
    }
    return (int) length;
  }

  private static String shortened(String text) {
    return text.length() > 60 ? text.substring(0, 60) + "…" : text;
  }

  private <P extends MessageConsumer & MessageIssueHandler> void message(int length, P peer)
      throws IOException {
    if (length > LIMIT) {
      listening &= skip(in, length);
      return;
    }
    // all of it first: whatever goes wrong inside, the next message begins where this one ends
    byte[] message = in.readNBytes(length);
    if (message.length < length) {
      listening = false;
      return;
    }
    // UTF-8 is the only one the protocol knows
    String text = new String(message, StandardCharsets.UTF_8);
    try {
      peer.consume(json.parseMessage(text));
    } catch (MessageIssueException flawed) {
      // one whose id stands behind what cannot be read looks like a notice
      boolean notice = flawed.getRpcMessage() instanceof NotificationMessage;
      Optional<RequestMessage> request = notice ? Unreadable.request(text) : Optional.empty();
      peer.handle(request.isPresent() ? request.get() : flawed.getRpcMessage(), flawed.getIssues());
    } catch (StackOverflowError tooDeep) {
      log.unreadable("A message is nested too deep and is passed over.");
    } catch (RuntimeException unreadable) {
      Unreadable.request(text)
          .ifPresentOrElse(
              request -> peer.handle(request, List.of(Unreadable.issue(text, unreadable))),
              () ->
                  log.unreadable(
                      "A message could not be read and is passed over: "
                          + Unreadable.words(unreadable)
                          + "."));
    }
  }

  private static boolean skip(InputStream input, int length) throws IOException {
    byte[] nowhere = new byte[CHUNK];
    int left = length;
    while (left > 0) {
      int read = input.read(nowhere, 0, Math.min(left, CHUNK));
      if (read < 0) {
        return false;
      }
      left -= read;
    }
    return true;
  }
}
