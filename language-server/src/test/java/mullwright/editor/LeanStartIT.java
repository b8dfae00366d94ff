package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An editor that starts the server over standard streams pays for nothing but that. */
class LeanStartIT {
  @TempDir Path folder;

  @Test
  void noClassOfTheBrowsersEditorIsLoaded() throws Exception {
    Path loaded = folder.resolve("loaded.txt");
    Tools.Ran ran =
        Tools.run(
            folder,
            Map.of(),
            List.of(
                "java",
                "-Xlog:class+load:file=" + loaded,
                "-jar",
                Tools.jar().toString(),
                "serve"));
    assertThat(ran.output()).isEmpty();
    assertThat(Files.readString(loaded))
        .contains("mullwright.server.ServeMain")
        .doesNotContain("mullwright.web.", "org.java_websocket.", "com.sun.net.httpserver.")
        .doesNotContain("org.slf4j.", "picocli.", "java.util.logging.LogManager");
  }
}
