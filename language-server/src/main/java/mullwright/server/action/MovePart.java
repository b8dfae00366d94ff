package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import mullwright.workspace.Cursor;
import mullwright.workspace.Supposition;
import mullwright.workspace.UsedFile;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Moves a part that a wall file describes for itself (a profile, an anchor, a glass) into a catalog
 * the file uses, where other walls find it.
 *
 * <p>Refused if anything would mean something else afterwards, as where the two files differ in
 * what a bare number is.
 */
@AutoService(ActionSource.class)
public final class MovePart implements ActionSource {
  private static final String INDENT = "  ";

  @Override
  public String kind() {
    return CodeActionKind.RefactorExtract;
  }

  @Override
  public List<Action> offers(Selected selected) {
    Cursor cursor = selected.cursor();
    Statement part = part(cursor);
    if (part == null) {
      return List.of();
    }
    String name =
        part.keyword().text()
            + part.argument(Argument.Name.class).map(it -> " " + it.word().text()).orElse("");
    List<Action> offers = new ArrayList<>();
    for (String used : used(cursor.file(), selected)) {
      Document catalog = selected.document().view().document(used).orElse(null);
      Optional<Integer> end = catalog == null ? Optional.empty() : endOfCatalog(catalog.file());
      if (end.isPresent()) {
        offers.add(
            Action.of(
                "Move " + name + " to the catalog " + used,
                () -> moved(part, selected, catalog, end.get(), name)));
      }
    }
    return offers;
  }

  /** The part whose own lines the cursor is on, itself or one of its properties. */
  private static Statement part(Cursor cursor) {
    for (Statement statement : cursor.enclosing()) {
      if (statement.kind() == StatementKind.CATALOG_PART) {
        return statement;
      }
    }
    return null;
  }

  private static List<String> used(ParsedFile file, Selected selected) {
    List<String> used = new ArrayList<>();
    for (Segment segment : file.segments()) {
      for (Statement statement : segment.statements()) {
        if (statement.kind() == StatementKind.USE) {
          statement
              .argument(Argument.Text.class)
              .flatMap(path -> UsedFile.resolve(selected.document().path(), path.string().text()))
              .ifPresent(used::add);
        }
      }
    }
    return used;
  }

  /** Where the line of the last catalog's closing brace begins. */
  private static Optional<Integer> endOfCatalog(ParsedFile file) {
    Optional<Integer> end = Optional.empty();
    for (int i = 0; i < file.segments().size(); i++) {
      for (Statement statement : file.segments().get(i).statements()) {
        Optional<Block> block = statement.block().filter(Block::closed);
        if (statement.kind() == StatementKind.CATALOG_BLOCK && block.isPresent()) {
          end = Optional.of(file.segmentStart(i) + block.get().range().end() - 1);
        }
      }
    }
    return end;
  }

  private static Edits moved(
      Statement part, Selected selected, Document catalog, int brace, String name) {
    Document from = selected.document();
    String text = selected.text();
    LineTable lines = from.file().lines();
    TextRange whole = from.file().absolute(selected.cursor().segment(), part.range());
    int start = Lines.withCommentsAbove(lines, whole.start(), text);
    int end = Lines.after(lines, whole.end(), text);
    String moved = indented(text.substring(start, end));
    int at = Lines.start(catalog.file().lines(), brace);
    boolean ownLine = catalog.file().text().substring(at, brace).isBlank();
    int place = ownLine ? at : brace;
    String inserted = Lines.endingAs(catalog.file().text(), (ownLine ? "" : "\n") + moved);
    TextRange gone = Lines.withSpareBlanks(new TextRange(start, end), text);
    StringBuilder fromAfter = new StringBuilder(text).delete(gone.start(), gone.end());
    StringBuilder toAfter = new StringBuilder(catalog.file().text()).insert(place, inserted);
    new Supposition(
            from.snapshot(),
            Map.of(from.path(), fromAfter.toString(), catalog.path(), toAfter.toString()))
        .difference(selected.desk().cancel())
        .ifPresent(
            what -> {
              throw Route.refused(name + " stays where it is, since " + what + ".");
            });
    Edits edits = new Edits(from.view());
    edits.annotate(
        "Move " + name, "Every wall that uses " + catalog.path() + " can name it from then on.");
    edits.replace(from, from.range(gone.start(), gone.end()), "");
    edits.replace(catalog, catalog.range(place, place), inserted);
    return edits;
  }

  /** The lines one step in, whatever they stood at, keeping their steps among themselves. */
  private static String indented(String lines) {
    StringBuilder text = new StringBuilder();
    for (String line : lines.stripTrailing().stripIndent().split("\n")) {
      text.append(line.isBlank() ? "" : INDENT + line.stripTrailing()).append('\n');
    }
    return text.toString();
  }
}
