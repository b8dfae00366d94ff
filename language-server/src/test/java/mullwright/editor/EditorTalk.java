package mullwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import mullwright.server.WireRecorder;

/**
 * A real editor does what a drafter does with a wall of {@code
 * src/test/resources/editors/workspace} and says what it saw, a line each. What it and the server
 * said to each other is recorded among the messages of all other tests.
 */
final class EditorTalk {
  private static final Path WORKSPACE = Path.of("src/test/resources/editors/workspace");

  private final String editor;
  private final Path folder;

  /** Takes a fresh copy of the workspace. */
  EditorTalk(String editor, Path folder) {
    this.editor = editor;
    this.folder = folder;
    copy(WORKSPACE, folder);
  }

  Path wall() {
    return folder.resolve("walls/east.wall");
  }

  /** The folder of the editor's client. */
  Path client() {
    return Tools.project().resolve("editor-clients").resolve(editor);
  }

  /** What the editor said, after it ended. */
  String run(String... command) throws IOException, InterruptedException {
    Path log = Files.createTempFile("mullwright-editor", ".txt");
    try {
      Map<String, String> environment = new HashMap<>();
      environment.put("WALL_FILE", wall().toString());
      environment.put("WALL_SERVER", String.join("\n", server()));
      environment.put("WALL_LOG", log.toString());
      Tools.Ran ran = Tools.run(folder, environment, List.of(command));
      return ran.output() + Files.readString(log);
    } finally {
      Files.delete(log);
    }
  }

  /** Keeps the talk for the replay, if asked to by {@code -Dsessions.record=true}. */
  void keep() throws IOException {
    if (Boolean.getBoolean("sessions.record")) {
      Session.keep(editor, recording(), folder);
    }
  }

  private Path recording() {
    return Path.of("target/lsp-messages", "editor-" + editor + ".jsonl").toAbsolutePath();
  }

  /** What every editor must have seen, and what the wall must look like in the end. */
  void hold(String said) throws IOException {
    assertThat(said)
        .doesNotContain("gave up")
        .contains("diagnostic 26:")
        .contains("unknown-name")
        .contains("Write mullion")
        .contains("clean")
        .containsPattern("hover .*heat-strengthened")
        .contains("offer mullion-s", "offer jamb")
        .contains("stopped");
    assertThat(Files.readString(wall()))
        .contains("vertical all  as mullion\n", "row belt ", "sill..belt")
        .contains("\n    clip all  at sill\n");
  }

  private List<String> server() {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command = new ArrayList<>();
    command.addAll(
        List.of(java, "-cp", Path.of("target/test-classes").toAbsolutePath().toString()));
    command.add(WireRecorder.class.getName());
    command.add(recording().toString());
    command.addAll(List.of(java, "-jar", Tools.jar().toString(), "serve"));
    return command;
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path there = to.resolve(from.relativize(file).toString());
        Files.createDirectories(there.getParent());
        Files.copy(file, there);
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
