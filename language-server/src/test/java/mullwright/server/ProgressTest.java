package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Phaser;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Long work is told and can be stopped; short work is told to those who ask only. */
class ProgressTest {
  @TempDir Path folder;

  private final List<String> told = new ArrayList<>();
  private final List<CompletableFuture<Object>> asked = new ArrayList<>();
  private final AtomicLong now = new AtomicLong();

  /** An editor that writes down what it is told. */
  private final Editor editor =
      new Editor() {
        @Override
        public void notify(String method, Object parameters) {
          JsonObject value = ((JsonObject) parameters).getAsJsonObject("value");
          told.add(
              value.get("kind").getAsString()
                  + (value.has("percentage") ? " " + value.get("percentage") : ""));
        }

        @Override
        public CompletableFuture<Object> request(String method, Object parameters) {
          asked.add(new CompletableFuture<>());
          return asked.get(asked.size() - 1);
        }
      };

  private Progress ofOurOwn() {
    Progress[] progress = new Progress[1];
    progress[0] =
        new Progress(
            editor,
            "ours",
            "Reading walls",
            () -> editor.request("create", null).thenRun(progress[0]::taken),
            now::get,
            () -> {});
    return progress[0];
  }

  @Test
  void whatIsOverSoonIsToldToNobody() {
    Progress progress = ofOurOwn();
    Cancel cancel = progress.over(Cancel.NEVER);
    assertThat(cancel.asked()).isFalse();
    now.addAndGet(Progress.A_WHILE - 1);
    assertThat(cancel.asked()).isFalse();
    progress.end();
    assertThat(told).isEmpty();
    assertThat(asked).isEmpty();
  }

  /** LSP 3.17, "Work Done Progress": nothing may be told before the client has taken the token. */
  @Test
  void whatGoesOnIsToldOnceTheEditorHasTakenTheToken() {
    Progress progress = ofOurOwn();
    Cancel cancel = progress.over(Cancel.NEVER);
    cancel.check();
    now.addAndGet(Progress.A_WHILE);
    cancel.check();
    cancel.check();
    assertThat(asked).hasSize(1);
    assertThat(told).isEmpty();
    asked.get(0).complete(null);
    cancel.check();
    cancel.check();
    assertThat(told).containsExactly("begin");
    progress.cancel();
    assertThatThrownBy(cancel::check).isInstanceOf(Cancel.Cancelled.class);
    progress.end();
    assertThat(told).containsExactly("begin", "end");
  }

  @Test
  void aTokenOfTheEditorsOwnIsToldAtOnce() {
    Progress progress = new Progress(editor, 7, "Checking", null, now::get, () -> {});
    progress.report(0, 4, "east.wall");
    progress.report(1, 4, "west.wall");
    progress.end();
    assertThat(told).containsExactly("begin 0", "report 25", "end");
  }

  @Test
  void anyRequestThatReadsWallsTellsUnderTheEditorsToken() {
    for (int i = 0; i < 3; i++) {
      Conversation.write(folder, "w" + i + ".wall", "wall W" + i + " {\n}\n");
    }
    try (Conversation talk = Conversation.greeted("progress", folder)) {
      WorkspaceSymbolParams symbols = new WorkspaceSymbolParams("W");
      symbols.setWorkDoneToken(Either.forLeft("symbols"));
      assertThat(await(talk.server.getWorkspaceService().symbol(symbols)).getRight()).hasSize(3);
      assertThat(kinds(talk, "symbols")).containsExactly("begin", "end");
      talk.open(Conversation.address(folder.resolve("w0.wall")), WallTalk.WALL.text());
      ExecuteCommandParams schedule = new ExecuteCommandParams("mullwright.showLengths", List.of());
      schedule.setWorkDoneToken(Either.forRight(4));
      await(talk.server.getWorkspaceService().executeCommand(schedule));
      assertThat(kinds(talk, "4")).containsExactly("begin", "end");
      talk.heard.logged.clear();
    }
  }

  /** LSP 3.17, "Client Initiated Progress": the token is valid until the answer is sent. */
  @Test
  void nothingIsToldUnderATokenOnceItsRequestIsTakenBack() {
    for (int i = 0; i < 40; i++) {
      Conversation.write(folder, "w" + i + ".wall", WallTalk.WALL.text());
    }
    RawTalk talk = new RawTalk();
    talk.say(
        RawTalk.INITIALIZE.replace(
            "'params':{", "'params':{'rootUri':'" + Conversation.address(folder) + "',"));
    talk.answer(1);
    talk.say(
        "{'jsonrpc':'2.0','id':2,'method':'workspace/diagnostic','params':"
            + "{'previousResultIds':[],'workDoneToken':'walls'}}");
    assertThat(told(talk.next())).isEqualTo("begin");
    talk.say("{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':2}}");
    String last = "";
    JsonObject next = talk.next();
    while (!next.has("id")) {
      last = told(next);
      next = talk.next();
    }
    assertThat(last).isEqualTo("end");
    assertThat(next.getAsJsonObject("error").get("code").getAsInt()).isEqualTo(-32800);
    talk.say("{'jsonrpc':'2.0','id':3,'method':'shutdown'}");
    assertThat(talk.next().get("id").getAsInt()).isEqualTo(3);
    talk.say("{'jsonrpc':'2.0','method':'exit'}");
    assertThat(talk.end()).isZero();
  }

  private static String told(JsonObject message) {
    assertThat(message.get("method").getAsString()).isEqualTo("$/progress");
    return message.getAsJsonObject("params").getAsJsonObject("value").get("kind").getAsString();
  }

  /** LSP 3.17, "Work Done Progress Begin": rules are run in two threads, which both look up. */
  @Test
  void workThatGoesOnInTwoThreadsBeginsOnce() {
    AtomicInteger begins = new AtomicInteger();
    AtomicInteger asks = new AtomicInteger();
    Editor counts =
        new Editor() {
          @Override
          public void notify(String method, Object parameters) {
            JsonObject value = ((JsonObject) parameters).getAsJsonObject("value");
            begins.addAndGet(value.get("kind").getAsString().equals("begin") ? 1 : 0);
          }

          @Override
          public CompletableFuture<Object> request(String method, Object parameters) {
            asks.incrementAndGet();
            return CompletableFuture.completedFuture(null);
          }
        };
    int rounds = 5000;
    for (int i = 0; i < rounds; i++) {
      Progress[] ours = new Progress[1];
      AtomicLong clock = new AtomicLong();
      ours[0] =
          new Progress(
              counts,
              "ours",
              "Reading walls",
              () -> counts.request("create", null).thenRun(ours[0]::taken),
              clock::get,
              () -> {});
      ours[0].goesOn();
      clock.set(Progress.A_WHILE);
      Phaser together = new Phaser(2);
      Runnable work =
          () -> {
            together.arriveAndAwaitAdvance();
            ours[0].goesOn();
            ours[0].goesOn();
          };
      CompletableFuture<Void> other = CompletableFuture.runAsync(work);
      work.run();
      other.join();
    }
    assertThat(asks).hasValue(rounds);
    assertThat(begins).hasValue(rounds);
  }

  @Test
  void nothingIsToldOrAskedOnceItIsOver() {
    Progress progress = new Progress(editor, 7, "Checking", null, now::get, () -> {});
    progress.report(0, 4, "east.wall");
    progress.end();
    progress.report(1, 4, "west.wall");
    progress.end();
    assertThat(told).containsExactly("begin 0", "end");
    Progress ours = ofOurOwn();
    ours.goesOn();
    ours.end();
    now.addAndGet(Progress.A_WHILE);
    ours.goesOn();
    assertThat(asked).isEmpty();
  }

  private static List<String> kinds(Conversation talk, String token) {
    List<String> kinds = new ArrayList<>();
    talk.heard.progress.forEach(
        it -> {
          Object of = it.getToken().get();
          if (of.toString().equals(token)) {
            kinds.add(it.getValue().getLeft().getKind().name());
          }
        });
    return kinds;
  }

  /** The walls are so many that the word to stop comes while they are read. */
  @Test
  void aRequestThatIsToldToStopIsTakenBack() {
    for (int i = 0; i < 40; i++) {
      Conversation.write(folder, "w" + i + ".wall", WallTalk.WALL.text());
    }
    try (Conversation talk = Conversation.greeted("progress", folder)) {
      WorkspaceSymbolParams symbols = new WorkspaceSymbolParams("");
      symbols.setWorkDoneToken(Either.forLeft("symbols"));
      var answer = talk.server.getWorkspaceService().symbol(symbols);
      talk.server.cancelProgress(new WorkDoneProgressCancelParams(Either.forLeft("symbols")));
      // LSP 3.17, ErrorCodes.RequestCancelled; one that was faster is whole
      String end =
          answer.handle((all, stopped) -> stopped == null ? "" : stopped.toString()).join();
      assertThat(end).matches("|.*Taken back\\..*");
      // the talk goes on
      assertThat(
              await(talk.server.getWorkspaceService().symbol(new WorkspaceSymbolParams("East")))
                  .getRight())
          .isNotEmpty();
    }
  }

  @Test
  void theServerSaysWhereItTellsUnderAToken() {
    Conversation talk = new Conversation("progress");
    var server = talk.greet(folder, AbleClient.capabilities()).getCapabilities();
    assertThat(server.getExecuteCommandProvider().getWorkDoneProgress()).isTrue();
    assertThat(server.getWorkspaceSymbolProvider().getRight().getWorkDoneProgress()).isTrue();
    assertThat(server.getReferencesProvider().getRight().getWorkDoneProgress()).isTrue();
    assertThat(server.getRenameProvider().getRight().getWorkDoneProgress()).isTrue();
    assertThat(server.getDiagnosticProvider().getWorkDoneProgress()).isTrue();
    talk.close();
  }
}
