package mullwright.server;

import java.io.BufferedInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.RemoteEndpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethodProvider;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.json.StreamMessageConsumer;
import org.eclipse.lsp4j.jsonrpc.messages.CancelParams;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.MessageIssue;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;

/**
 * The wire between a client and a service, put together from LSP4J's parts.
 *
 * <p>LSP4J's own launcher finds methods by reflection and speaks to the client through a proxy,
 * which together are a third of a cold start; here the service brings its table of methods and
 * sends through {@link Endpoint#notify}. No stack trace goes over the wire.
 */
final class Wire {
  private static final int BUFFER = 1 << 16;

  /** So many letters of what a reader of messages says are passed on. */
  private static final int WORDS = 300;

  private final MessageReader reader;
  private final Remote remote;

  <S extends Endpoint & JsonRpcMethodProvider> Wire(
      InputStream in, OutputStream out, S service, Log log) {
    MessageJsonHandler json =
        new MessageJsonHandler(service.supportedMethods(), LeanAdapters::register);
    this.remote = new Remote(new StreamMessageConsumer(out, json), service, log);
    json.setMethodProvider(remote);
    remote.setJsonHandler(json);
    this.reader = new MessageReader(new BufferedInputStream(in, BUFFER), json, remote, log);
  }

  /** The client. */
  Endpoint client() {
    return remote;
  }

  /** Reads messages and hands them to the service until the input or the talk ends. */
  void listen() {
    reader.listen(remote);
  }

  /** Stops reading after the message in hand. */
  void hangUp() {
    reader.close();
  }

  private static final class Remote extends RemoteEndpoint {
    private final MessageConsumer out;
    private final Log log;
    private final Set<String> pending = ConcurrentHashMap.newKeySet();

    Remote(MessageConsumer out, Endpoint service, Log log) {
      super(out, service, fault -> error(fault, log));
      this.out = out;
      this.log = log;
    }

    private static ResponseError error(Throwable fault, Log log) {
      Throwable cause =
          fault instanceof CompletionException && fault.getCause() != null
              ? fault.getCause()
              : fault;
      if (cause instanceof ResponseErrorException refusal) {
        return refusal.getResponseError();
      }
      log.fault("Answering", cause);
      return new ResponseError(ResponseErrorCode.InternalError, "Internal error: " + cause, null);
    }

    @Override
    protected void handleRequest(RequestMessage request) {
      pending.add(request.getId());
      super.handleRequest(request);
    }

    @Override
    protected ResponseMessage createResponseMessage(RequestMessage request) {
      pending.remove(request.getId());
      return super.createResponseMessage(request);
    }

    /** A question may be taken back when its answer is on the way; that is no news. */
    @Override
    protected boolean handleCancellation(NotificationMessage notice) {
      boolean late =
          notice.getParams() instanceof CancelParams which && !pending.contains(which.getId());
      return late || super.handleCancellation(notice);
    }

    @Override
    protected void logIssues(Message message, List<MessageIssue> issues) {
      String what =
          message instanceof NotificationMessage notice
              ? "The parameters of '" + notice.getMethod() + "' cannot be read"
              : "A message cannot be read";
      log.unreadable(what + ": " + said(issues.get(0)) + ". It is passed over.");
    }

    /** What is wrong, without the names of exceptions and the advice for programmers. */
    private static String said(MessageIssue issue) {
      Exception cause = issue.getCause();
      String why = cause == null || cause.getMessage() == null ? "" : cause.getMessage();
      String words = why.replaceFirst("^([a-z]+\\.)+\\w+: ", "").replaceFirst("(?s)\n.*", "");
      return issue.getText()
          + " "
          + (words.length() > WORDS ? words.substring(0, WORDS) + "…" : words);
    }

    @Override
    protected void handleRequestIssues(RequestMessage request, List<MessageIssue> issues) {
      ResponseError error =
          new ResponseError(
              issues.get(0).getIssueCode(),
              "The parameters of '"
                  + request.getMethod()
                  + "' cannot be read: "
                  + said(issues.get(0)),
              null);
      out.consume(createErrorResponseMessage(request, error));
    }
  }
}
