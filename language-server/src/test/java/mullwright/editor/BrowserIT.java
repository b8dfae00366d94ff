package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Walls are edited in a browser: mistake, hover, mend, layout, saving; and whatever happens beside,
 * on the disk or the way to the server, nothing that was typed is lost.
 */
class BrowserIT {
  private static final Path SCRIPT = Path.of("src/test/browser").toAbsolutePath();
  private static final Path PICTURES = Path.of("target/browser").toAbsolutePath();

  @TempDir Path workspace;

  @BeforeEach
  void lay() throws Exception {
    Tools.needed("chromium", "chromium", "--version");
    Tools.needed("Node", "node", "--version");
    Assumptions.assumeTrue(
        Files.exists(SCRIPT.resolve("node_modules/playwright-core")),
        "the browser's driver is not installed: run npm ci in " + SCRIPT);
    copy(Tools.project().resolve("examples"), workspace);
  }

  @Test
  void aWallIsEditedMendedAndSaved() throws Exception {
    Path wall = workspace.resolve("ferry-terminal/east.wall");
    Tools.Ran ran = drive("edit-a-wall.mjs", wall, PICTURES);
    assertThat(ran.output()).contains("edited, mended, saved");
    assertThat(ran.exit()).isZero();
    assertThat(wall).content().endsWith("// looked over by another, twice");
  }

  @Test
  void whatIsTypedIsKept() throws Exception {
    Tools.Ran ran = drive("keep-what-is-typed.mjs", workspace, PICTURES.resolve("kept"));
    assertThat(ran.output()).contains("kept, followed, told");
    assertThat(ran.exit()).isZero();
  }

  private Tools.Ran drive(String script, Path edited, Path pictures) throws Exception {
    Process server =
        new ProcessBuilder(
                "java", "-jar", Tools.jar().toString(), "serve", "--web", workspace.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      return Tools.run(
          SCRIPT,
          Map.of(),
          List.of("node", script, address(server), edited.toString(), pictures.toString()));
    } finally {
      server.destroy();
    }
  }

  /** The address is the one line that is one. */
  private static String address(Process server) throws IOException {
    BufferedReader out =
        new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      if (line.startsWith("http://127.0.0.1:")) {
        return line;
      }
    }
    throw new IOException("the server printed no address");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.toList()) {
        Path copied = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copied);
        } else {
          Files.copy(file, copied);
        }
      }
    }
  }
}
