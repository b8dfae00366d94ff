package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * The page of the live drawing in Debian's Chromium, beside a talk with the jar over standard
 * streams. Pictures are kept in {@code target/preview}.
 */
class PreviewIT {
  @Test
  void aDrafterEditsLooksClicksAndGoesAboutByKeys() throws Exception {
    Tools.needed("node", "node", "--version");
    Tools.needed("chromium", "/usr/bin/chromium", "--version");
    Path folder = Path.of("src/test/preview").toAbsolutePath();
    Assumptions.assumeTrue(
        Files.isDirectory(folder.resolve("node_modules")),
        "the npm packages are not installed here: run npm ci in " + folder);
    Tools.Ran ran =
        Tools.run(
            folder,
            Map.of(),
            List.of(
                "node",
                "check.mjs",
                Tools.jar().toString(),
                Tools.project().resolve("examples").toString(),
                Path.of("target", "preview").toAbsolutePath().toString()));
    assertThat(ran.exit()).as(ran.output()).isZero();
  }

  /** Whoever does not ask for the drawing does not pay for it. */
  @Test
  void untilSomebodyAsksNoClassOfThePreviewIsLoaded() throws Exception {
    Path log = Files.createTempFile("mullwright-classes", ".log");
    Process server =
        new ProcessBuilder(
                "java",
                "-Xlog:class+load:file=" + log,
                "-jar",
                Tools.jar().toString(),
                "serve",
                "--stdio")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try (var in = server.getOutputStream()) {
      String begin =
          "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}";
      String open =
          "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\",\"params\":{\"textDocument\":"
              + "{\"uri\":\"untitled:a\",\"languageId\":\"wall\",\"version\":1,\"text\":\"wall A {\\n}\\n\"}}}";
      String ask =
          "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"textDocument/documentHighlight\",\"params\":"
              + "{\"textDocument\":{\"uri\":\"untitled:a\"},\"position\":{\"line\":0,\"character\":1}}}";
      String shutdown = "{\"jsonrpc\":\"2.0\",\"id\":3,\"method\":\"shutdown\"}";
      String exit = "{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}";
      for (String message : List.of(begin, open, ask, shutdown, exit)) {
        in.write(("Content-Length: " + message.length() + "\r\n\r\n" + message).getBytes());
      }
    }
    server.getInputStream().readAllBytes();
    assertThat(server.waitFor()).isZero();
    List<String> loaded = Files.readAllLines(log);
    assertThat(loaded).anyMatch(line -> line.contains("mullwright.server.Live "));
    assertThat(loaded)
        .noneMatch(line -> line.contains("mullwright.preview."))
        .noneMatch(line -> line.contains("mullwright.drawing."))
        .noneMatch(line -> line.contains("com.sun.net.httpserver."));
    Files.delete(log);
  }
}
