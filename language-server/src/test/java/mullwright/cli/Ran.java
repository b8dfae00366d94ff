package mullwright.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** What came of a command run over string streams in a folder. */
record Ran(int code, String out, String err) {
  static Ran in(Path folder, String... arguments) {
    return with(folder, Map.of(), false, new byte[0], arguments);
  }

  static Ran with(
      Path folder,
      Map<String, String> environment,
      boolean terminal,
      byte[] input,
      String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Shell shell =
        new Shell(
            new ByteArrayInputStream(input),
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            folder,
            environment,
            terminal);
    int code = CommandRun.run(shell, arguments);
    shell.out().flush();
    shell.err().flush();
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
