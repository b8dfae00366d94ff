package mullwright.editor;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** Runs the programs these tests need, and finds out whether they are there. */
public final class Tools {
  private static final long PATIENCE_SECONDS = 180;

  private Tools() {}

  /** What a program printed, and how it ended. */
  public record Ran(int exit, String output) {}

  /** Skips the test, naming the tool, if the command cannot be run. */
  public static void needed(String tool, String... command) throws InterruptedException {
    boolean there;
    try {
      there = run(Path.of("."), Map.of(), List.of(command)).exit() == 0;
    } catch (IOException missing) {
      there = false;
    }
    Assumptions.assumeTrue(there, tool + " is not installed here");
  }

  /** Runs a command to its end; standard error is part of the output. */
  public static Ran run(Path folder, Map<String, String> environment, List<String> command)
      throws IOException, InterruptedException {
    Path output = Files.createTempFile("mullwright-tool", ".txt");
    try {
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .redirectOutput(output.toFile());
      builder.environment().putAll(environment);
      Process process = builder.start();
      process.getOutputStream().close();
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
        return new Ran(-1, Files.readString(output) + "\n(stopped: it did not end)");
      }
      String text = new String(Files.readAllBytes(output), StandardCharsets.UTF_8);
      return new Ran(process.exitValue(), text);
    } finally {
      Files.deleteIfExists(output);
    }
  }

  /** The runnable jar, as packaged. */
  public static Path jar() {
    Path jar = Path.of("target", "mullwright.jar").toAbsolutePath();
    Assumptions.assumeTrue(Files.exists(jar), "the jar is not packaged yet: run mvn verify");
    return jar;
  }

  /** The folder of the whole project. */
  public static Path project() {
    return Path.of("").toAbsolutePath().getParent();
  }
}
