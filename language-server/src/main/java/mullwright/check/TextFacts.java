package mullwright.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Model;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;

/**
 * What a rule about the text may look at: the files as read, and the model made of them.
 *
 * @param model of the file under check
 * @param files every parsed file by its workspace path: the file itself and those it uses
 * @param problems what the text says that cannot be, each mistake once: the model's problems but
 *     those that only follow from another, or from a line that could not be read
 */
public record TextFacts(Model model, Map<String, ParsedFile> files, List<ModelProblem> problems) {
  public TextFacts {
    files = Map.copyOf(files);
  }

  /** All of the model's problems looked through, once for all rules. */
  public TextFacts(Model model, Map<String, ParsedFile> files) {
    this(model, files, Consequences.without(new TextFacts(model, files, List.of())));
  }

  /** The words that stand at an origin, or nothing if its file is not at hand. */
  public Optional<String> textAt(Origin origin) {
    return segment(origin)
        .filter(segment -> origin.range().end() <= segment.text().length())
        .map(segment -> segment.text().substring(origin.range().start(), origin.range().end()));
  }

  /** The segment an origin lies in. */
  public Optional<Segment> segment(Origin origin) {
    ParsedFile file = files.get(origin.file());
    return file == null || origin.segment() >= file.segments().size()
        ? Optional.empty()
        : Optional.of(file.segments().get(origin.segment()));
  }

  /** The innermost statement that holds an origin. */
  public Optional<Statement> statementAt(Origin origin) {
    return segment(origin).flatMap(segment -> innermost(segment.statements(), origin.range()));
  }

  private static Optional<Statement> innermost(List<Statement> statements, TextRange range) {
    for (Statement statement : statements) {
      if (statement.range().start() <= range.start() && range.end() <= statement.range().end()) {
        return statement
            .block()
            .flatMap(block -> innermost(block.statements(), range))
            .or(() -> Optional.of(statement));
      }
    }
    return Optional.empty();
  }
}
