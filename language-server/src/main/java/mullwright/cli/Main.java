package mullwright.cli;

import java.io.BufferedInputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mullwright.server.ServeMain;

/**
 * Starts the program: the language server at once, any other command through {@link CommandRun}.
 */
public final class Main {
  /** What editors add of themselves, and users: standard streams are all there is. */
  private static final List<String> STREAMS = List.of("--stdio", KeptServing.OFF);

  private Main() {}

  /** Runs the command and ends the program with its exit code. */
  public static void main(String[] arguments) {
    System.exit(run(arguments));
  }

  private static int run(String[] arguments) {
    // an editor waits for the server: nothing that it does not need may be loaded before
    List<String> words = Arrays.asList(arguments);
    if (!words.isEmpty()
        && words.get(0).equals("serve")
        && STREAMS.containsAll(words.subList(1, words.size()))) {
      return ServeMain.overStandardStreams(
          words.contains(KeptServing.OFF) ? Optional.empty() : KeptServing.folder());
    }
    // later Java versions make a console even where nobody looks, unless told which one is meant
    System.setProperty("jdk.console", "java.base");
    boolean terminal = System.console() != null;
    Shell shell =
        new Shell(
            // a file's own way to read so many bytes asks for its position, and a pipe has none
            new BufferedInputStream(new FileInputStream(FileDescriptor.in)),
            utf8(FileDescriptor.out),
            utf8(FileDescriptor.err),
            Path.of(""),
            System.getenv(),
            terminal);
    int code = CommandRun.run(shell, arguments);
    shell.out().flush();
    shell.err().flush();
    return code;
  }

  // the same bytes whatever the machine's own encoding
  private static PrintStream utf8(FileDescriptor to) {
    return new PrintStream(new FileOutputStream(to), false, StandardCharsets.UTF_8);
  }
}
