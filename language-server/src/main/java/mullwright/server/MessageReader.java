package mullwright.server;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.lsp4j.jsonrpc.MessageIssueHandler;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.json.StreamMessageProducer;

/**
 * Reads messages, each after a header that says how long it is (LSP 3.17, "Base Protocol"). What
 * cannot be read is told once and passed over.
 */
final class MessageReader extends StreamMessageProducer {
  /** The longest message that is read, in bytes: a text of the size limit, all of it escaped. */
  static final int LIMIT = 64 << 20;

  private static final String LENGTH = "Content-Length";
  private static final int CHUNK = 1 << 13;

  private final Log log;

  MessageReader(InputStream in, MessageJsonHandler json, MessageIssueHandler issues, Log log) {
    super(in, json, issues);
    this.log = log;
  }

  /** Header names are read in any case; the text is UTF-8, the only one the protocol knows. */
  @Override
  protected void parseHeader(String line, Headers headers) {
    int colon = line.indexOf(':');
    if (colon < 0 || !line.substring(0, colon).strip().equalsIgnoreCase(LENGTH)) {
      return;
    }
    String length = line.substring(colon + 1).strip();
    headers.charset = StandardCharsets.UTF_8.name();
    if (length.isEmpty() || !length.chars().allMatch(c -> c >= '0' && c <= '9')) {
      log.unreadable("A header is no length and is passed over: '" + shortened(line) + "'.");
    } else {
      headers.contentLength = clamped(length);
      if (headers.contentLength > LIMIT) {
        log.unreadable(
            "A message of "
                + shortened(length)
                + " bytes is announced; it is passed over, since the limit is "
                + LIMIT
                + ".");
      }
    }
  }

  private static int clamped(String digits) {
    String plain = digits.replaceFirst("^0+(?=.)", "");
    if (plain.length() > 10) {
      return Integer.MAX_VALUE;
    }
    return (int) Math.min(Integer.MAX_VALUE, Long.parseLong(plain));
  }

  private static String shortened(String text) {
    return text.length() > 60 ? text.substring(0, 60) + "…" : text;
  }

  @Override
  protected boolean handleMessage(InputStream input, Headers headers) {
    try {
      if (headers.contentLength > LIMIT) {
        return skip(input, headers.contentLength);
      }
      // all of it first: whatever goes wrong inside, the next message begins where this one ends
      byte[] message = input.readNBytes(headers.contentLength);
      return message.length == headers.contentLength
          && super.handleMessage(new ByteArrayInputStream(message), headers);
    } catch (IOException gone) {
      log.unreadable("The input has failed: " + gone.getMessage());
      return false;
    } catch (StackOverflowError tooDeep) {
      log.unreadable("A message is nested too deep and is passed over.");
      return true;
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

  @Override
  protected void fireError(Throwable error) {
    log.unreadable("A message could not be read and is passed over: " + error.getMessage());
  }
}
