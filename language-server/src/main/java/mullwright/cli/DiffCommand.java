package mullwright.cli;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import mullwright.check.Rules;
import mullwright.quantity.UnitSystem;
import mullwright.report.Document;
import mullwright.report.DocumentJson;
import mullwright.report.DocumentWriter;
import mullwright.report.MarkdownWriter;
import mullwright.report.MergeDocument;
import mullwright.report.ReviewDocument;
import mullwright.report.ReviewHtml;
import mullwright.report.ReviewInput;
import mullwright.report.ReviewJson;
import mullwright.report.TextWriter;
import mullwright.workspace.Cancel;
import mullwright.workspace.FileReview;
import mullwright.workspace.MergeReview;
import mullwright.workspace.Reviews;
import mullwright.workspace.State;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what changed between two states of walls, as walls and not as lines of text. */
@Command(
    name = "diff",
    description = {
      "What changed between two states of walls: changes in the trade's words, and what follows"
          + " from each for pieces, material, checks and reactions.",
      "A state is a file, a folder, REVISION:PATH or a git revision. Without any, HEAD against the"
          + " work tree; with one, that against the work tree."
    },
    mixinStandardHelpOptions = true)
final class DiffCommand implements Callable<Integer> {
  /** Forms the answer comes in. */
  enum Output {
    TEXT,
    MARKDOWN,
    JSON,
    HTML
  }

  private static final double PERCENT = 100;

  private final Shell shell;

  @Mixin private Looks looks = new Looks();

  @Parameters(
      paramLabel = "STATE",
      arity = "0..3",
      description = {
        "OLD and NEW: files, folders, REVISION:PATH or revisions.",
        "BASE, OURS and THEIRS: whether two sides of a merge agree as a wall."
      })
  private List<String> states = new ArrayList<>();

  @Option(
      names = "--output",
      paramLabel = "FORM",
      description =
          "text, markdown (for a review comment), json (by diff.schema.json), html (one page with"
              + " both elevations).")
  private Output output = Output.TEXT;

  @Option(names = "--staged", description = "The newer state is what is staged for a commit.")
  private boolean staged;

  @Option(
      names = "--as",
      paramLabel = "PATH",
      description =
          "Read both files as if they lay at that path: for tools that hand over copies, so that"
              + " used files are found.")
  private String as;

  @Option(
      names = "--growth",
      paramLabel = "PERCENT",
      description = "Reactions are told that grew by more than so many percent; 10 unless stated.")
  private double growth = 10;

  @Option(
      names = "--root",
      paramLabel = "DIR",
      description = "Folder above which no file on disk is used.")
  private String root;

  DiffCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    int width = looks.width(shell);
    if (!(growth >= 0)) {
      throw new CannotException("--growth " + growth + " is no percentage of 0 or more.");
    }
    try (Sources sources = new Sources(shell, root, Optional.ofNullable(as))) {
      if (states.size() == 3) {
        return merge(sources, width);
      }
      List<Sources.Side> sides = sides(sources);
      State old = sides.get(0).state();
      State now = sides.get(1).state();
      List<FileReview> files = Reviews.of(old, now, Cancel.NEVER);
      ReviewInput input =
          new ReviewInput(
              sides.get(0).label(), sides.get(1).label(), old, now, files, growth / PERCENT);
      shell.out().print(written(input, width));
      return files.stream().allMatch(FileReview::nothing) ? Exit.CLEAN : Exit.FINDINGS;
    }
  }

  private int merge(Sources sources, int width) throws CannotException {
    if (staged) {
      throw new CannotException("--staged goes with one state, not with three.");
    }
    List<State> three = new ArrayList<>();
    for (String argument : states) {
      three.add(sources.side(argument, Optional.empty()).state());
    }
    List<MergeReview> files =
        MergeReview.of(
            three.get(0), three.get(1), three.get(2), UnitSystem.US, Rules.find(), Cancel.NEVER);
    Document document =
        MergeDocument.make(
            "Merge of " + states.get(1) + " and " + states.get(2) + ", from " + states.get(0),
            files);
    DocumentWriter writer =
        switch (output) {
          case TEXT -> new TextWriter(width, looks.paint(shell));
          case MARKDOWN -> new MarkdownWriter();
          case JSON -> new DocumentJson();
          case HTML ->
              throw new CannotException("A merge is told as text, markdown or json, not as html.");
        };
    shell.out().print(writer.write(document));
    return files.stream().allMatch(MergeReview::clean) ? Exit.CLEAN : Exit.FINDINGS;
  }

  private String written(ReviewInput input, int width) {
    if (output == Output.JSON) {
      return ReviewJson.write(input);
    }
    if (output == Output.HTML) {
      return ReviewHtml.write(input);
    }
    Document document = ReviewDocument.make(input);
    return output == Output.MARKDOWN
        ? new MarkdownWriter().write(document)
        : new TextWriter(width, looks.paint(shell)).write(document);
  }

  private List<Sources.Side> sides(Sources sources) throws CannotException {
    String first = states.isEmpty() ? "HEAD" : states.get(0);
    if (states.size() == 2) {
      if (staged) {
        throw new CannotException("--staged is the newer state; name the older one only.");
      }
      String second = states.get(1);
      return List.of(
          sources.side(first, besides(sources, second)),
          sources.side(second, besides(sources, first)));
    }
    boolean part = !states.isEmpty() && sources.onDisk(first);
    Optional<String> only = part ? Optional.of(first) : Optional.empty();
    Sources.Side old = sources.side(part ? "HEAD" : first, only);
    return List.of(old, staged ? sources.staged() : sources.workTree(only));
  }

  private static Optional<String> besides(Sources sources, String argument) {
    return sources.onDisk(argument) ? Optional.of(argument) : Optional.empty();
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new DiffCommand(shell);
    }
  }
}
