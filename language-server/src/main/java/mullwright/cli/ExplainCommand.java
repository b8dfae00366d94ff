package mullwright.cli;

import com.google.auto.service.AutoService;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.check.Rules;
import mullwright.report.Explanation;
import mullwright.report.Paint;
import mullwright.report.RulePages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Explains a rule, a line of a wall, or the defaults a wall leans on. */
@Command(
    name = "explain",
    description = "Explain a rule, the numbers of a line of a wall, or all defaults of a file.",
    mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {
  private static final Pattern PLACE = Pattern.compile("(.+?):([0-9]{1,9})(:[0-9]{1,9})?");

  private final Shell shell;

  @Parameters(
      paramLabel = "RULE|FILE|FILE:LINE",
      description =
          "A rule (splice-unsupported), a line (east.wall:31), or a file whose walls' defaults are"
              + " wanted (east.wall).")
  private String subject;

  @Mixin private Looks looks = new Looks();

  @Option(
      names = "--root",
      paramLabel = "DIR",
      description = "Folder above which no file is used; else as for check.")
  private String root;

  ExplainCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    int width = looks.width(shell);
    Paint paint = looks.paint(shell);
    Optional<String> page = new RulePages(Rules.find()).page(subject, width, paint);
    if (page.isPresent()) {
      shell.out().print(page.get());
      return Exit.CLEAN;
    }
    Matcher place = PLACE.matcher(subject);
    if (isFile(subject)) {
      shell.out().print(explanation(subject, width, paint).defaults());
    } else if (place.matches() && isFile(place.group(1))) {
      int line = Integer.parseInt(place.group(2));
      shell
          .out()
          .print(
              explanation(place.group(1), width, paint)
                  .line(line)
                  .orElseThrow(
                      () ->
                          new CannotException(
                              "“" + place.group(1) + "” has no line " + line + ".")));
    } else {
      throw new CannotException(unknown());
    }
    return Exit.CLEAN;
  }

  private boolean isFile(String argument) throws CannotException {
    return Files.isRegularFile(WallFinder.path(shell.directory(), argument));
  }

  private String unknown() {
    List<String> near = new RulePages(Rules.find()).nearest(subject);
    return "“"
        + subject
        + "” is neither a rule nor a file. "
        + (near.isEmpty()
            ? "“mullwright rules” lists all rules."
            : "Did you mean " + String.join(" or ", near) + "?");
  }

  private Explanation explanation(String file, int width, Paint paint) throws CannotException {
    List<Path> files = WallFinder.find(shell.directory(), List.of(file));
    Opened opened = Targets.open(shell, files, root);
    if (!opened.readable(shell).all()) {
      throw new CannotException("Nothing can be explained of “" + file + "”.");
    }
    String path = opened.paths().get(0);
    return new Explanation(opened.workspace().snapshot(), path, opened.shown(path), width, paint);
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new ExplainCommand(shell);
    }
  }
}
