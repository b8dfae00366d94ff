package mullwright.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;

/**
 * What a command has round it. Tests bring their own.
 *
 * @param in standard input
 * @param out for what was asked for, {@code err} for what went wrong
 * @param directory the folder paths are relative to
 * @param environment of which {@code COLUMNS} and {@code NO_COLOR} are heeded
 * @param terminal true if a person looks at {@code out}
 */
record Shell(
    InputStream in,
    PrintStream out,
    PrintStream err,
    Path directory,
    Map<String, String> environment,
    boolean terminal) {
  /** The same of a command that stands in another folder. */
  Shell in(Path folder) {
    return new Shell(in, out, err, folder, environment, terminal);
  }

  Shell {
    directory = directory.toAbsolutePath().normalize();
    environment = Map.copyOf(environment);
  }
}
