package mullwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.concurrent.Callable;
import mullwright.server.Shortage;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** Reads the command line, runs the command it names and answers its exit code. */
final class CommandRun {
  private CommandRun() {}

  /** The exit code; never throws. */
  static int run(Shell shell, String... arguments) {
    CommandLine line = new CommandLine(new Mullwright());
    makers(arguments).forEach(maker -> line.addSubcommand(maker.make(shell)));
    boolean colour = Looks.colour(shell, Looks.Colour.AUTO);
    line.setOut(new PrintWriter(shell.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(shell.err(), true, StandardCharsets.UTF_8));
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(
            colour ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
    line.setUsageHelpWidth(Math.max(60, Looks.columns(shell)));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler((wrong, given) -> wrongUse(shell, wrong));
    line.setExecutionExceptionHandler(
        (failed, command, parsed) -> failed(shell, failed, arguments));
    try {
      return line.execute(arguments);
    } catch (OutOfMemoryError shortage) {
      Say.wrong(shell, Shortage.needs("This", "run it on fewer files"));
      return Exit.COULD_NOT;
    }
  }

  /** Of the command that is named first; of all where none is, as the help lists them. */
  private static List<CommandMaker> makers(String... arguments) {
    List<CommandMaker> makers = new ArrayList<>();
    ServiceLoader.load(CommandMaker.class, CommandRun.class.getClassLoader()).forEach(makers::add);
    makers.sort(Comparator.comparing(maker -> maker.getClass().getName()));
    // to look at the options of them all takes longer than most commands run
    List<CommandMaker> named =
        makers.stream()
            .filter(maker -> arguments.length > 0 && maker.name().equals(arguments[0]))
            .toList();
    return named.isEmpty() ? makers : named;
  }

  private static int wrongUse(Shell shell, ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    if (wrong instanceof UnmatchedArgumentException stray
        && command.getParent() == null
        && !stray.isUnknownOption()) {
      List<String> near = stray.getSuggestions();
      Say.wrong(
          shell,
          "There is no command “"
              + stray.getUnmatched().get(0)
              + "”. "
              + (near.isEmpty() ? "" : "Did you mean " + String.join(" or ", near) + "? ")
              + "See “mullwright --help”.");
      return Exit.COULD_NOT;
    }
    Say.wrong(shell, wrong.getMessage() + ". See “" + name + " --help”.");
    return Exit.COULD_NOT;
  }

  private static int failed(Shell shell, Exception failed, String[] arguments) {
    if (failed instanceof CannotException) {
      Say.wrong(shell, failed.getMessage());
    } else {
      Say.wrong(
          shell,
          "A fault of Mullwright itself, not of your wall: "
              + failed
              + " while running “"
              + String.join(" ", arguments)
              + "”. Please report it with the file that led to it.");
      failed.printStackTrace(shell.err());
    }
    return Exit.COULD_NOT;
  }

  /** What is said without a command. */
  @Command(
      name = "mullwright",
      description = "Curtain walls as text: checks, lengths, one layout, and an editor's server.",
      mixinStandardHelpOptions = true,
      versionProvider = Version.class,
      synopsisSubcommandLabel = "COMMAND",
      footer = {
        "",
        "Exit codes: 0 nothing found, 1 findings or files that would change, 2 could not run.",
        "Structural and safety results are aids to drafting: a licensed engineer and the local"
            + " code govern."
      })
  static final class Mullwright implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
      throw new ParameterException(spec.commandLine(), "A command is missing");
    }
  }
}
