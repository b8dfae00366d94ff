package mullwright.server;

import java.util.Optional;
import java.util.function.Function;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentPositionParams;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * One method of the protocol: its name, the type of its parameters, and who answers.
 *
 * @param method as the protocol spells it, {@code textDocument/hover}
 * @param parameters what the parameters are read into
 */
public record Route<P>(String method, Class<P> parameters, Answerer<P> answerer) {
  /** Answers one request. */
  @FunctionalInterface
  public interface Answerer<P> {
    /** The answer, null where there is none. May be given up by {@link Desk#cancel}. */
    Object answer(P parameters, Desk desk);
  }

  /** Answers one request about a document. */
  @FunctionalInterface
  public interface DocumentAnswerer<P> {
    /** The answer, null where there is none. */
    Object answer(P parameters, Document document, Desk desk);
  }

  /** Answers one request about a place in a document. */
  @FunctionalInterface
  public interface OffsetAnswerer<P> {
    /** The answer, null where there is none. */
    Object answer(P parameters, Document document, int offset, Desk desk);
  }

  /** A method that asks about a document; one that nobody knows is answered with null. */
  public static <P> Route<P> ofDocument(
      String method,
      Class<P> type,
      Function<P, TextDocumentIdentifier> which,
      DocumentAnswerer<P> answerer) {
    return new Route<>(
        method,
        type,
        (parameters, desk) -> {
          Optional<Document> document =
              desk.document(
                  needed(needed(which.apply(parameters), "textDocument").getUri(), "uri"));
          return document.map(found -> answerer.answer(parameters, found, desk)).orElse(null);
        });
  }

  /** The same, answering that where there is no answer: of some methods it may not be null. */
  public Route<P> orElse(Object none) {
    return new Route<>(
        method,
        parameters,
        (given, desk) -> {
          Object answer = answerer.answer(given, desk);
          return answer == null ? none : answer;
        });
  }

  /** A method that asks about a place in a document. */
  public static <P extends TextDocumentPositionParams> Route<P> ofPlace(
      String method, Class<P> type, OffsetAnswerer<P> answerer) {
    return ofDocument(
        method,
        type,
        TextDocumentPositionParams::getTextDocument,
        (parameters, document, desk) ->
            answerer.answer(
                parameters,
                document,
                document.offset(needed(parameters.getPosition(), "position")),
                desk));
  }

  /**
   * The value of a field the protocol demands.
   *
   * @throws ResponseErrorException if the client left it out
   */
  public static <T> T needed(T value, String field) {
    if (value == null) {
      throw new ResponseErrorException(
          new ResponseError(
              ResponseErrorCode.InvalidParams, "The parameters lack '" + field + "'.", null));
    }
    return value;
  }

  /** The refusal of a question about a text that has changed since. */
  public static ResponseErrorException modified() {
    return Lapse.MODIFIED.refusal();
  }

  /**
   * The refusal of what cannot be done.
   *
   * @param why a sentence for the user
   */
  public static ResponseErrorException refused(String why) {
    return new ResponseErrorException(
        new ResponseError(ResponseErrorCode.RequestFailed, why, null));
  }

  Object answer(Object given, Desk desk) {
    return answerer.answer(parameters.cast(needed(given, "params")), desk);
  }
}
