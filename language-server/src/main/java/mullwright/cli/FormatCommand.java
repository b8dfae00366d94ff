package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import mullwright.format.Formatter;
import mullwright.syntax.ParsedFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays files out in the one layout, in place. */
@Command(
    name = "format",
    description = "Lay files out in place; lines that cannot be read stay as they are.",
    mixinStandardHelpOptions = true)
final class FormatCommand implements Callable<Integer> {
  private static final String STANDARD_INPUT = "-";

  private final Shell shell;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description =
          "Files, folders or patterns such as '**/*.wall'; - reads standard input and writes"
              + " standard output; the current folder if none is given.")
  private List<String> given = new ArrayList<>();

  @Option(
      names = "--check",
      description = "Change nothing; name the files that would change and end with 1.")
  private boolean check;

  FormatCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException, IOException {
    if (given.contains(STANDARD_INPUT)) {
      if (given.size() > 1) {
        throw new CannotException("“-” stands for standard input and takes no file beside it.");
      }
      return standardInput();
    }
    boolean failed = false;
    boolean changes = false;
    for (Path file : WallFinder.find(shell.directory(), given)) {
      String name = Shown.path(shell.directory(), file);
      try {
        WallText text = WallText.read(file, name);
        String laidOut = Formatter.format(ParsedFile.parse(text.text()));
        if (!laidOut.equals(text.text())) {
          changes = true;
          if (!check) {
            text.write(file, laidOut);
          }
          shell.out().print(name + "\n");
        }
      } catch (CannotException cannot) {
        Say.wrong(shell, cannot.getMessage());
        failed = true;
      } catch (IOException broken) {
        Say.wrong(shell, "“" + name + "” cannot be written: " + broken.getMessage() + ".");
        failed = true;
      }
    }
    if (failed) {
      return Exit.COULD_NOT;
    }
    return check && changes ? Exit.FINDINGS : Exit.CLEAN;
  }

  private int standardInput() throws CannotException, IOException {
    byte[] limited = shell.in().readNBytes((int) WallText.SIZE_LIMIT + 1);
    WallText text = WallText.decode(limited, "standard input");
    String laidOut = Formatter.format(ParsedFile.parse(text.text()));
    if (check) {
      return laidOut.equals(text.text()) ? Exit.CLEAN : Exit.FINDINGS;
    }
    shell.out().write(text.encode(laidOut).getBytes(StandardCharsets.UTF_8));
    shell.out().flush();
    return Exit.CLEAN;
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new FormatCommand(shell);
    }
  }
}
