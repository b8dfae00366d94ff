package mullwright.server;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import com.google.gson.stream.MalformedJsonException;
import java.io.EOFException;
import java.util.Optional;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.MessageIssue;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/** What is wrong with a message, in words for people. */
final class Unreadable {
  /** So many letters of what a reader of messages says are passed on. */
  private static final int WORDS = 300;

  private static final String NO_JSON = "It is no JSON.";

  private Unreadable() {}

  static String sentence(Message message, MessageIssue issue) {
    return what(message) + ": " + words(issue) + ". It is passed over.";
  }

  static String what(Message message) {
    String method = null;
    if (message instanceof NotificationMessage notice) {
      method = notice.getMethod();
    } else if (message instanceof RequestMessage request) {
      method = request.getMethod();
    }
    return method == null
        ? "A message cannot be read"
        : "The parameters of '" + method + "' cannot be read";
  }

  static MessageIssue issue(String text, RuntimeException cause) {
    try {
      JsonParser.parseString(text);
      return new MessageIssue("Message could not be parsed.", 0, cause);
    } catch (JsonParseException noJson) {
      return new MessageIssue(NO_JSON, 0, noJson);
    }
  }

  /**
   * The request a text was meant to be, with what is known of it; without an id where that cannot
   * be told (JSON-RPC 2.0, "Response object": such a request is answered under null). Empty if
   * nobody waits for an answer, or if the text is an answer itself.
   */
  static Optional<RequestMessage> request(String text) {
    RequestMessage request = new RequestMessage();
    JsonElement said;
    try {
      said = JsonParser.parseString(text);
    } catch (JsonParseException noJson) {
      return Optional.of(request);
    }
    if (!(said instanceof JsonObject message)) {
      return Optional.of(request);
    }
    if (!message.has("method") || !message.has("id")) {
      return Optional.empty();
    }
    if (message.get("method") instanceof JsonPrimitive method) {
      request.setMethod(method.getAsString());
    }
    if (message.get("id") instanceof JsonPrimitive id && !id.isBoolean()) {
      request.setRawId(
          id.isString() ? Either.forLeft(id.getAsString()) : Either.forRight(id.getAsBigDecimal()));
    }
    return Optional.of(request);
  }

  /** The number of the error that tells what kind of text it is (JSON-RPC 2.0, "Error object"). */
  static ResponseErrorCode code(RequestMessage request, MessageIssue issue) {
    boolean json = !issue.getText().equals(NO_JSON);
    for (Throwable cause = issue.getCause(); cause != null; cause = cause.getCause()) {
      json &= !(cause instanceof MalformedJsonException || cause instanceof EOFException);
    }
    if (!json) {
      return ResponseErrorCode.ParseError;
    }
    return request.getMethod() != null && hasId(request)
        ? ResponseErrorCode.InvalidParams
        : ResponseErrorCode.InvalidRequest;
  }

  /** Whether its id is one of the protocol's: a text, or a whole number of 32 bits. */
  private static boolean hasId(RequestMessage request) {
    Either<String, Number> id = request.getRawId();
    return id != null && (id.isLeft() || id.getRight().doubleValue() == id.getRight().intValue());
  }

  /** What is wrong, without the names of exceptions and the advice for programmers. */
  static String words(MessageIssue issue) {
    return issue.getText() + " " + words(issue.getCause());
  }

  static String words(Throwable cause) {
    String why = cause == null || cause.getMessage() == null ? "" : cause.getMessage();
    String words =
        why.replaceFirst("^([a-z]+\\.)+\\w+: ", "")
            .replaceFirst("(?s)[.]?(\n.*)?$", "")
            .replaceFirst("^Use JsonReader\\S+ to accept malformed JSON", "Malformed JSON");
    return words.length() > WORDS ? words.substring(0, WORDS) + "…" : words;
  }
}
