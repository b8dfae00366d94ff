package mullwright.server;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.WorkDoneProgressParams;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethodProvider;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * The table of methods: hands what comes over the wire to the worker, in order, and guards the
 * phases of the talk (LSP 3.17, "Lifecycle Messages").
 *
 * <p>Called by the reader's thread only, which it never keeps waiting.
 */
final class Service implements Endpoint, JsonRpcMethodProvider {
  private static final String INITIALIZE = "initialize";
  private static final String SHUTDOWN = "shutdown";
  private static final String EXIT = "exit";
  private static final String SHOW_DOCUMENT = "window/showDocument";
  private static final String CONFIGURATION = "workspace/configuration";
  private static final String APPLY_EDIT = "workspace/applyEdit";

  private final Map<String, Route<?>> routes = new LinkedHashMap<>();
  private final List<Feature> features;
  private final Worker worker;
  private final Notices notices;
  private final IntConsumer atExit;
  private volatile Phase phase = Phase.BEFORE;

  private enum Phase {
    BEFORE,
    OPEN,
    SHUT
  }

  /**
   * @param notices takes what is told without being asked
   * @param atExit told the exit code when the client says {@code exit}
   */
  Service(List<Feature> features, Worker worker, Notices notices, IntConsumer atExit) {
    this.features = features;
    this.worker = worker;
    this.notices = notices;
    this.atExit = atExit;
    for (Feature feature : features) {
      for (Route<?> route : feature.routes()) {
        if (routes.put(route.method(), route) != null) {
          throw new IllegalStateException("two features answer " + route.method());
        }
      }
    }
  }

  @Override
  public Map<String, JsonRpcMethod> supportedMethods() {
    Map<String, JsonRpcMethod> methods = new LinkedHashMap<>();
    methods.put(INITIALIZE, JsonRpcMethod.request(INITIALIZE, JsonObject.class, JsonObject.class));
    methods.put(SHUTDOWN, JsonRpcMethod.request(SHUTDOWN, Object.class));
    methods.put(EXIT, JsonRpcMethod.notification(EXIT));
    routes.forEach(
        (name, route) ->
            methods.put(name, JsonRpcMethod.request(name, Object.class, route.parameters())));
    // questions of the server's own: without this their answers would be dropped unread
    methods.put(
        SHOW_DOCUMENT, JsonRpcMethod.request(SHOW_DOCUMENT, JsonElement.class, JsonElement.class));
    methods.put(
        CONFIGURATION, JsonRpcMethod.request(CONFIGURATION, JsonElement.class, JsonElement.class));
    methods.put(
        APPLY_EDIT, JsonRpcMethod.request(APPLY_EDIT, JsonElement.class, JsonElement.class));
    notices
        .parameters()
        .forEach((name, type) -> methods.put(name, JsonRpcMethod.notification(name, type)));
    return methods;
  }

  @Override
  public CompletableFuture<?> request(String method, Object parameters) {
    if (phase == Phase.SHUT) {
      return refused(ResponseErrorCode.InvalidRequest, "The server is shut down.");
    }
    if (method.equals(INITIALIZE)) {
      return initialize(parameters);
    }
    if (phase == Phase.BEFORE) {
      return refused(
          ResponseErrorCode.ServerNotInitialized, "'" + method + "' came before 'initialize'.");
    }
    if (method.equals(SHUTDOWN)) {
      phase = Phase.SHUT;
      return answered((cancel, progress) -> null, Lapse.NEVER, Optional.empty());
    }
    Route<?> route = routes.get(method);
    if (route == null) {
      return refused(ResponseErrorCode.MethodNotFound, "'" + method + "' is not offered.");
    }
    return answered(
        (cancel, progress) -> {
          notices.asked(parameters);
          return route.answer(parameters, notices.session().desk(cancel, progress));
        },
        Lapse.of(method),
        Optional.of(progress(method, parameters)));
  }

  /** The progress of a request: told under the client's token, else once it takes long. */
  private Progress progress(String method, Object parameters) {
    Either<String, Integer> token =
        parameters instanceof WorkDoneProgressParams asked ? asked.getWorkDoneToken() : null;
    String title =
        switch (method) {
          case "workspace/diagnostic" -> "Checking walls";
          case "workspace/executeCommand", "workspace/textDocumentContent" -> "Working out figures";
          default -> "Reading walls";
        };
    Session session = notices.session();
    return session.progresses().begin(token, title, session.client());
  }

  private CompletableFuture<?> initialize(Object parameters) {
    if (phase != Phase.BEFORE) {
      return refused(ResponseErrorCode.InvalidRequest, "'initialize' came twice.");
    }
    if (!(parameters instanceof JsonObject said)) {
      return refused(ResponseErrorCode.InvalidParams, "'initialize' lacks its parameters.");
    }
    Session session = notices.begin(new Client(said));
    phase = Phase.OPEN;
    return CompletableFuture.completedFuture(Capabilities.of(session, features));
  }

  /** Answers on the worker; the future is the way to take the question back. */
  private CompletableFuture<Object> answered(
      Answer answer, Lapse lapse, Optional<Progress> progress) {
    Question question = new Question(new Future(progress), lapse, progress);
    Cancel cancel =
        lapse == Lapse.NEVER
            ? question::isTakenBack
            : () -> question.isTakenBack() || worker.editWaits();
    worker.ask(
        () -> {
          try {
            cancel.check();
            Object whole = answer.under(question.over(cancel), progress);
            if (whole instanceof Piecemeal pieces) {
              worker.whenIdle(() -> piece(pieces, question));
            } else if (whole instanceof Apart apart) {
              worker.beside(() -> apart(apart, question));
            } else {
              question.answer(whole);
            }
          } catch (Throwable fault) {
            // whatever goes wrong in one answer costs that answer only
            failed(question, fault);
          }
        });
    return question.future;
  }

  private static void apart(Apart apart, Question question) {
    try {
      question.answer(apart.answer(question.over(question::isTakenBack)));
    } catch (Throwable fault) {
      question.fail(fault);
    }
  }

  private void piece(Piecemeal pieces, Question question) {
    try {
      Optional<Object> whole = Optional.empty();
      try {
        whole = pieces.next(() -> question.isTakenBack() || worker.editWaits());
      } catch (CancellationException stale) {
        // an edit waits: the piece is computed anew after it
      }
      if (whole.isPresent() || question.isTakenBack()) {
        question.answer(whole.orElse(null));
      } else {
        worker.whenIdle(() -> piece(pieces, question));
      }
    } catch (Throwable fault) {
      failed(question, fault);
    }
  }

  private void failed(Question question, Throwable fault) {
    if (fault instanceof OutOfMemoryError) {
      notices.session().forget();
    }
    question.fail(fault);
  }

  /**
   * Taken back by the client, a request is answered at once, whatever the worker is at; the
   * client's token holds until then and no longer (LSP 3.17, "Client Initiated Progress").
   */
  private static final class Future extends CompletableFuture<Object> {
    private final Optional<Progress> progress;

    Future(Optional<Progress> progress) {
      this.progress = progress;
    }

    @Override
    public boolean cancel(boolean mayInterrupt) {
      progress.ifPresent(Progress::end);
      return super.cancel(mayInterrupt);
    }
  }

  /** A request until it is answered; what was told of its progress ends before the answer. */
  private record Question(
      CompletableFuture<Object> future, Lapse lapse, Optional<Progress> progress) {
    boolean isTakenBack() {
      return future.isCancelled();
    }

    Cancel over(Cancel cancel) {
      return progress.map(it -> it.over(cancel)).orElse(cancel);
    }

    void answer(Object whole) {
      progress.ifPresent(Progress::end);
      future.complete(whole);
    }

    void fail(Throwable fault) {
      progress.ifPresent(Progress::end);
      boolean outdated = fault instanceof CancellationException && !isTakenBack();
      future.completeExceptionally(outdated ? lapse.refusal() : fault);
    }
  }

  private interface Answer {
    Object under(Cancel cancel, Optional<Progress> progress);
  }

  private static CompletableFuture<Object> refused(ResponseErrorCode code, String why) {
    return CompletableFuture.failedFuture(
        new ResponseErrorException(new ResponseError(code, why, null)));
  }

  /** True once the client has asked for the end. */
  boolean isShut() {
    return phase == Phase.SHUT;
  }

  @Override
  public void notify(String method, Object parameters) {
    if (method.equals(EXIT)) {
      atExit.accept(phase == Phase.SHUT ? 0 : 1);
    } else if (phase == Phase.OPEN) {
      notices.take(method, parameters);
    }
  }
}
