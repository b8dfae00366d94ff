package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.Route;
import mullwright.syntax.Argument;
import mullwright.syntax.Block;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.workspace.Supposition;
import mullwright.workspace.UsePaths;

/**
 * Moves a wall out of a file of several into a file of its own, which uses the first for its
 * project and catalog.
 *
 * <p>Refused if either wall would come out otherwise, as where the wall is like another of its
 * file.
 */
@AutoService(ActionSource.class)
public final class SplitFile implements ActionSource {
  @Override
  public String kind() {
    return "refactor.move";
  }

  @Override
  public List<Action> offers(Selected selected) {
    List<Statement> enclosing = selected.cursor().enclosing();
    if (enclosing.size() != 1
        || enclosing.get(0).kind() != StatementKind.WALL_BLOCK
        || walls(selected.document().file()) < 2) {
      return List.of();
    }
    Statement wall = enclosing.get(0);
    String name = wall.argument(Argument.Name.class).map(it -> it.word().text()).orElse("");
    String path = path(selected.document().path(), name);
    String title = "Move wall " + name + " to a file of its own, " + path;
    Client client = selected.desk().client();
    if (name.isEmpty()) {
      return List.of();
    }
    if (!selected.document().snapshot().placed()) {
      return List.of(
          Action.refused(
              title, "This text is in no file yet that another could use. Save it first."));
    }
    if (!Edits.makesFiles(client)) {
      return List.of(Action.refused(title, "This editor cannot be told to make files."));
    }
    if (selected.document().view().document(path).isPresent()) {
      return List.of(Action.refused(title, "There is a file " + path + " already."));
    }
    if (UsePaths.written(path, selected.document().path()).isEmpty()) {
      return List.of(
          Action.refused(title, "No use can be written that leads to this file's name."));
    }
    return List.of(Action.of(title, () -> split(selected, wall, name, path)));
  }

  private static int walls(ParsedFile file) {
    int walls = 0;
    for (Segment segment : file.segments()) {
      for (Statement statement : segment.statements()) {
        walls += statement.kind() == StatementKind.WALL_BLOCK ? 1 : 0;
      }
    }
    return walls;
  }

  private static String path(String of, String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}0-9]+", "-");
    return of.substring(0, of.lastIndexOf('/') + 1) + plain + ".wall";
  }

  private static Edits split(Selected selected, Statement wall, String name, String path) {
    Document document = selected.document();
    String text = selected.text();
    LineTable lines = document.file().lines();
    TextRange whole = document.file().absolute(selected.cursor().segment(), wall.range());
    int start = Lines.withCommentsAbove(lines, whole.start(), text);
    int end = Lines.after(lines, whole.end(), text);
    TextRange gone = Lines.withSpareBlanks(new TextRange(start, end), text);
    String kept = new StringBuilder(text).delete(gone.start(), gone.end()).toString();
    String own = Lines.endingAs(text, head(document, wall) + text.substring(start, end));
    new Supposition(document.snapshot(), Map.of(document.path(), kept, path, own))
        .difference(selected.desk().cancel())
        .ifPresent(
            what -> {
              throw Route.refused("Wall " + name + " stays where it is, since " + what + ".");
            });
    Edits edits = new Edits(document.view());
    edits.annotate(
        "Move wall " + name, "It uses " + document.path() + " for its project and its catalog.");
    edits.create(document.view().addresses().apply(path), own);
    edits.replace(document, document.range(gone.start(), gone.end()), "");
    return edits;
  }

  /**
   * What the new file begins with: what the first uses, the first itself, its units and lets,
   * wherever in it they are said, since no file has these from another.
   */
  private static String head(Document document, Statement wall) {
    StringBuilder head = new StringBuilder();
    String file = document.path().substring(document.path().lastIndexOf('/') + 1);
    StringBuilder rest = new StringBuilder();
    ParsedFile parsed = document.file();
    for (int i = 0; i < parsed.segments().size(); i++) {
      for (Statement statement : parsed.segments().get(i).statements()) {
        if (statement.kind() == StatementKind.USE) {
          head.append(line(parsed, i, statement));
        } else if (statement != wall) {
          rest(parsed, i, statement, rest);
        }
      }
    }
    head.append("use \"").append(file).append("\"\n").append(rest).append('\n');
    return head.toString();
  }

  private static void rest(ParsedFile parsed, int segment, Statement statement, StringBuilder to) {
    if (statement.kind() == StatementKind.LET || statement.kind() == StatementKind.UNITS) {
      to.append(line(parsed, segment, statement));
    }
    for (Statement inside : statement.block().map(Block::statements).orElse(List.of())) {
      boolean let =
          inside.kind() == StatementKind.LET && statement.kind() == StatementKind.PROJECT_BLOCK;
      if (let || inside.kind() == StatementKind.UNITS) {
        to.append(line(parsed, segment, inside));
      }
    }
  }

  private static String line(ParsedFile parsed, int segment, Statement statement) {
    TextRange range = parsed.absolute(segment, statement.range());
    return parsed.text().substring(range.start(), range.end()) + "\n";
  }
}
