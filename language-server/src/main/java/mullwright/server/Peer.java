package mullwright.server;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.JsonRpcException;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.MessageIssueHandler;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.MethodProvider;
import org.eclipse.lsp4j.jsonrpc.messages.CancelParams;
import org.eclipse.lsp4j.jsonrpc.messages.IdentifiableMessage;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.MessageIssue;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;

/**
 * The two sides of a talk: hands what the client says to the service and answers it; says what the
 * service says and hands back the client's answers (JSON-RPC 2.0; LSP 3.17, "Cancellation
 * Support").
 *
 * <p>LSP4J's own endpoint keeps a logger, and to begin logging costs a cold start as much as
 * reading a catalog. No stack trace goes over the wire.
 */
final class Peer implements Endpoint, MessageConsumer, MessageIssueHandler, MethodProvider {
  private static final String CANCEL = "$/cancelRequest";

  private final MessageConsumer out;
  private final Endpoint service;
  private final Log log;
  private final AtomicInteger asked = new AtomicInteger();
  private final Map<String, Question> questions = new ConcurrentHashMap<>();
  private final Map<Id, CompletableFuture<?>> answering = new ConcurrentHashMap<>();

  /**
   * @param out the way to the client
   * @param service what answers the client
   */
  Peer(MessageConsumer out, Endpoint service, Log log) {
    this.out = out;
    this.service = service;
    this.log = log;
  }

  /** What the service asked, until the client answers. */
  private record Question(String method, CompletableFuture<Object> answer) {}

  /** What tells questions of the client's apart: 7 and "7" are two (JSON-RPC 2.0, section 4). */
  private record Id(String text, boolean number) {
    static Id of(IdentifiableMessage request) {
      return new Id(request.getId(), request.getRawId().isRight());
    }

    static Id of(CancelParams which) {
      return new Id(which.getId(), which.getRawId().isRight());
    }
  }

  @Override
  public void notify(String method, Object parameters) {
    NotificationMessage notice = new NotificationMessage();
    notice.setMethod(method);
    notice.setParams(parameters);
    try {
      out.consume(notice);
    } catch (JsonRpcException gone) {
      log.unreadable("'" + method + "' cannot be sent: " + gone.getMessage());
    } catch (RuntimeException unwritable) {
      log.fault("Writing '" + method + "'", unwritable);
    }
  }

  @Override
  public CompletableFuture<Object> request(String method, Object parameters) {
    RequestMessage request = new RequestMessage();
    request.setId(String.valueOf(asked.incrementAndGet()));
    request.setMethod(method);
    request.setParams(parameters);
    CompletableFuture<Object> answer = new CompletableFuture<>();
    questions.put(request.getId(), new Question(method, answer));
    try {
      out.consume(request);
    } catch (JsonRpcException gone) {
      questions.remove(request.getId());
      answer.completeExceptionally(gone);
    }
    return answer;
  }

  /** The method an answer of the client's is for, which tells how to read it. */
  @Override
  public String resolveMethod(String id) {
    Question question = questions.get(id);
    return question == null ? null : question.method();
  }

  @Override
  public void consume(Message message) {
    if (message instanceof RequestMessage request) {
      answer(request);
    } else if (message instanceof NotificationMessage notice) {
      take(notice);
    } else if (message instanceof ResponseMessage response) {
      take(response);
    }
  }

  private void take(NotificationMessage notice) {
    if (!notice.getMethod().equals(CANCEL)) {
      try {
        service.notify(notice.getMethod(), notice.getParams());
      } catch (RuntimeException fault) {
        log.fault("Taking '" + notice.getMethod() + "'", fault);
      }
    } else if (notice.getParams() instanceof CancelParams which && which.getId() != null) {
      // a question may be taken back when its answer is on the way; that is no news
      CompletableFuture<?> answer = answering.get(Id.of(which));
      if (answer != null) {
        answer.cancel(true);
      }
    }
  }

  private void take(ResponseMessage response) {
    Question question = response.getId() == null ? null : questions.remove(response.getId());
    if (question == null) {
      log.unreadable("An answer came to a question that was not asked. It is passed over.");
    } else if (response.getError() == null) {
      question.answer().complete(response.getResult());
    } else {
      question.answer().completeExceptionally(new ResponseErrorException(response.getError()));
    }
  }

  private void answer(RequestMessage request) {
    CompletableFuture<?> answer = asked(request);
    Id id = Id.of(request);
    answering.put(id, answer);
    answer.whenComplete(
        (result, fault) -> {
          answering.remove(id, answer);
          answered(request, result, fault);
        });
  }

  private CompletableFuture<?> asked(RequestMessage request) {
    try {
      return service.request(request.getMethod(), request.getParams());
    } catch (RuntimeException fault) {
      return CompletableFuture.failedFuture(fault);
    }
  }

  private void answered(RequestMessage request, Object result, Throwable fault) {
    ResponseMessage response = responseTo(request);
    if (fault == null) {
      response.setResult(result);
    } else {
      response.setError(error(request, fault));
    }
    try {
      out.consume(response);
    } catch (JsonRpcException gone) {
      log.unreadable("An answer cannot be sent: " + gone.getMessage());
    } catch (RuntimeException unwritable) {
      log.fault("Writing the answer to '" + request.getMethod() + "'", unwritable);
      ResponseMessage instead = responseTo(request);
      instead.setError(internal(unwritable));
      out.consume(instead);
    }
  }

  private ResponseError error(RequestMessage request, Throwable fault) {
    Throwable cause =
        fault instanceof CompletionException && fault.getCause() != null ? fault.getCause() : fault;
    if (cause instanceof ResponseErrorException refusal) {
      return refusal.getResponseError();
    }
    if (cause instanceof CancellationException) {
      return new ResponseError(
          ResponseErrorCode.RequestCancelled,
          "'" + request.getMethod() + "' was taken back by the client.",
          null);
    }
    log.fault("Answering", cause);
    if (cause instanceof OutOfMemoryError) {
      return new ResponseError(ResponseErrorCode.RequestFailed, Shortage.unanswered(), null);
    }
    return internal(cause);
  }

  private static ResponseError internal(Throwable cause) {
    return new ResponseError(ResponseErrorCode.InternalError, "Internal error: " + cause, null);
  }

  private static ResponseMessage responseTo(IdentifiableMessage request) {
    ResponseMessage response = new ResponseMessage();
    response.setRawId(request.getRawId());
    return response;
  }

  /** A message that cannot be read: a request gets an error, the rest is told once. */
  @Override
  public void handle(Message message, List<MessageIssue> issues) {
    if (message instanceof RequestMessage request) {
      ResponseMessage response = responseTo(request);
      response.setError(
          new ResponseError(
              Unreadable.code(request, issues.get(0)),
              Unreadable.what(request) + ": " + Unreadable.words(issues.get(0)),
              null));
      out.consume(response);
      return;
    }
    String sentence = Unreadable.sentence(message, issues.get(0));
    log.unreadable(sentence);
    if (message instanceof ResponseMessage response && response.getId() != null) {
      Question question = questions.remove(response.getId());
      if (question != null) {
        question.answer().completeExceptionally(new IllegalArgumentException(sentence));
      }
    }
  }
}
