package mullwright.server;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.model.Origin;
import org.eclipse.lsp4j.AnnotatedTextEdit;
import org.eclipse.lsp4j.ChangeAnnotation;
import org.eclipse.lsp4j.CreateFile;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ResourceOperation;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Gathers edits of texts and tells them in the form the client can take.
 *
 * <p>An edit made after {@link #annotate} carries that annotation for clients that show them
 * ({@code workspace.workspaceEdit.changeAnnotationSupport}).
 */
public final class Edits {
  private static final String SUPPORT = "workspace.workspaceEdit.";

  private final View view;
  private final Map<String, List<TextEdit>> byAddress = new LinkedHashMap<>();
  private final Map<String, Integer> versions = new HashMap<>();
  private final Map<String, ChangeAnnotation> annotations = new TreeMap<>();
  private final List<String> created = new ArrayList<>();
  private String annotation;

  /** No edits yet. */
  public Edits(View view) {
    this.view = view;
  }

  /** True if the client can be told to make files. */
  public static boolean makesFiles(Client client) {
    return client.can(SUPPORT + "documentChanges")
        && client.words(SUPPORT + "resourceOperations").contains("create");
  }

  /**
   * The edits from here on are of one kind.
   *
   * @param label what they do, a few words
   * @param consequence what follows from them, a sentence or two
   */
  public void annotate(String label, String consequence) {
    annotation = "change-" + (annotations.size() + 1);
    ChangeAnnotation told = new ChangeAnnotation(label);
    told.setDescription(consequence);
    annotations.put(annotation, told);
  }

  /** Puts a text in the place of an origin; false if the origin is gone. */
  public boolean replace(Origin origin, String text) {
    Optional<Document> document = view.document(origin.file());
    Optional<Range> range = document.flatMap(file -> file.range(origin));
    range.ifPresent(at -> replace(document.orElseThrow(), at, text));
    return range.isPresent();
  }

  /** Puts a text in the place of a range. */
  public void replace(Document document, Range range, String text) {
    versions.put(document.address(), document.version());
    add(document.address(), range, text);
  }

  /** True if there are none. */
  public boolean isEmpty() {
    return byAddress.isEmpty();
  }

  /** Makes a file with that text. */
  public void create(String address, String text) {
    created.add(address);
    Position start = new Position(0, 0);
    add(address, new Range(start, start), text);
  }

  private void add(String address, Range range, String text) {
    byAddress
        .computeIfAbsent(address, first -> new ArrayList<>())
        .add(
            annotation == null
                ? new TextEdit(range, text)
                : new AnnotatedTextEdit(range, text, annotation));
  }

  /**
   * The edits; by document and for the version they were made from, where the client takes {@code
   * workspace.workspaceEdit.documentChanges}.
   */
  public WorkspaceEdit toWorkspaceEdit(Client client) {
    boolean annotated = !annotations.isEmpty() && client.has(SUPPORT + "changeAnnotationSupport");
    if (!client.can(SUPPORT + "documentChanges")) {
      Map<String, List<TextEdit>> plain = new LinkedHashMap<>();
      byAddress.forEach((address, edits) -> plain.put(address, plain(edits)));
      return new WorkspaceEdit(plain);
    }
    List<Either<TextDocumentEdit, ResourceOperation>> changes = new ArrayList<>();
    created.forEach(address -> changes.add(Either.forRight(new CreateFile(address))));
    byAddress.forEach(
        (address, edits) ->
            changes.add(Either.forLeft(of(address, annotated ? edits : plain(edits)))));
    WorkspaceEdit edit = new WorkspaceEdit(changes);
    if (annotated) {
      edit.setChangeAnnotations(annotations);
    }
    return edit;
  }

  private static List<TextEdit> plain(List<TextEdit> edits) {
    return edits.stream().map(edit -> new TextEdit(edit.getRange(), edit.getNewText())).toList();
  }

  private TextDocumentEdit of(String address, List<TextEdit> edits) {
    return new TextDocumentEdit(
        new VersionedTextDocumentIdentifier(address, versions.get(address)),
        edits.stream().map(Either::<TextEdit, SnippetTextEdit>forLeft).toList());
  }
}
