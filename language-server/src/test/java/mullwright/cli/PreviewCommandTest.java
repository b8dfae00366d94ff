package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import mullwright.preview.PageTalk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The live drawing of files on disk, without an editor. */
class PreviewCommandTest {
  @TempDir Path folder;

  /** The command as it runs until it is interrupted. */
  private static final class Running implements AutoCloseable {
    final ByteArrayOutputStream err = new ByteArrayOutputStream();
    final CompletableFuture<Integer> code = new CompletableFuture<>();
    final String address;
    private final Thread thread;

    Running(Path folder, String... arguments) throws Exception {
      PipedInputStream printed = new PipedInputStream(1 << 16);
      Shell shell =
          new Shell(
              new ByteArrayInputStream(new byte[0]),
              new PrintStream(new PipedOutputStream(printed), false, StandardCharsets.UTF_8),
              new PrintStream(err, false, StandardCharsets.UTF_8),
              folder,
              Map.of(),
              false);
      thread = new Thread(() -> code.complete(CommandRun.run(shell, arguments)), "preview");
      thread.start();
      StringBuilder line = new StringBuilder();
      for (int c = printed.read(); c != '\n'; c = printed.read()) {
        line.append((char) c);
      }
      address = line.toString().strip();
    }

    @Override
    public void close() throws Exception {
      thread.interrupt();
      assertThat(code.get(30, TimeUnit.SECONDS)).isZero();
    }
  }

  @Test
  void aSavedFileIsDrawnAnew() throws Exception {
    try (GitWall wall = new GitWall(folder);
        Running running = new Running(folder, "preview", GitWall.WALL);
        PageTalk page = new PageTalk(running.address)) {
      page.listen();
      page.wait("summary", "No findings");
      wall.edit("gap 5/8\"", "gap 1/16\"");
      assertThat(page.wait("findings", "splice-gap-too-small")).contains("splice-0");
      assertThat(running.err.toString(StandardCharsets.UTF_8)).isEmpty();
    }
  }

  @Test
  void aCatalogThatIsSavedRedrawsTheWallThatUsesIt() throws Exception {
    try (GitWall wall = new GitWall(folder);
        Running running = new Running(folder, "preview", GitWall.WALL);
        PageTalk page = new PageTalk(running.address)) {
      page.listen();
      page.wait("summary", "No findings");
      Path catalog = wall.folder.resolve("catalog/captured.wall");
      Fixtures.write(
          wall.folder, "catalog/captured.wall", Fixtures.read(catalog).replace("28'", "12'"));
      assertThat(page.wait("findings", "stock-exceeded")).contains("vertical-0");
    }
  }

  @Test
  void aClickShowsTheTextAsThereIsNoEditor() throws Exception {
    try (GitWall wall = new GitWall(folder);
        Running running = new Running(folder, "preview", GitWall.WALL);
        PageTalk page = new PageTalk(running.address)) {
      page.listen();
      page.wait("drawing", "splice-0");
      assertThat(page.post("open?piece=splice-0").body()).contains("splice B..F");
      assertThat(wall.text()).contains("splice B..F");
    }
  }

  @Test
  void whatChangedSinceTheLastCommitIsLaidOver() throws Exception {
    try (GitWall wall = new GitWall(folder);
        Running running = new Running(folder, "preview", GitWall.WALL);
        PageTalk page = new PageTalk(running.address)) {
      page.listen();
      page.wait("summary", "No findings");
      page.look("base=1");
      page.wait("changes", "nothing changed");
      wall.edit("splice B..F", "splice B..E");
      assertThat(page.wait("changes", " gone")).contains("Since commit");
      assertThat(page.text("base")).contains("class=\"gone\"").contains("class=\"changed\"");
      wall.commit("second");
      wall.edit("splice B..E", "splice B..E ");
      page.wait("changes", "nothing changed");
      assertThat(page.text("base")).isEmpty();
    }
  }

  @Test
  void outsideOfARepositoryThereIsNothingBefore() throws Exception {
    Fixtures.lengths(folder);
    try (Running running = new Running(folder, "preview", "east.wall");
        PageTalk page = new PageTalk(running.address)) {
      page.listen();
      page.look("base=1");
      assertThat(page.wait("changes", "no git repository")).contains("nothing before");
    }
  }

  @Test
  void aPortThatIsTakenIsToldInASentence() throws Exception {
    Fixtures.lengths(folder);
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Ran ran =
          Ran.in(folder, "preview", "--port", String.valueOf(taken.getLocalPort()), "east.wall");
      assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
      assertThat(ran.err())
          .contains("cannot be served on port " + taken.getLocalPort())
          .contains("Leave --port out");
    }
  }

  @Test
  void aPortThatIsNoneIsToldInASentence() {
    assertThat(Ran.in(folder, "preview", "--port", "70000").err())
        .contains("--port 70000 is not between 1 and 65535.");
  }
}
