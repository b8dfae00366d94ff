package mullwright.server;

import com.google.gson.JsonElement;
import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/** Writes a diagnostic (LSP 3.17, "Diagnostic"); one that came from a client is read as usual. */
final class DiagnosticJson extends TypeAdapter<Diagnostic> {
  private final LeanAdapters.Usual<Diagnostic> usual;

  DiagnosticJson(LeanAdapters.Usual<Diagnostic> usual) {
    this.usual = usual;
  }

  @Override
  public Diagnostic read(JsonReader in) throws IOException {
    return usual.read(in);
  }

  @Override
  public void write(JsonWriter out, Diagnostic diagnostic) throws IOException {
    if (diagnostic == null || !isPlain(diagnostic)) {
      usual.write(out, diagnostic);
      return;
    }
    out.beginObject();
    range(out, diagnostic.getRange());
    if (diagnostic.getSeverity() != null) {
      out.name("severity").value(diagnostic.getSeverity().getValue());
    }
    if (diagnostic.getCode() != null) {
      out.name("code").value(diagnostic.getCode().getLeft());
    }
    if (diagnostic.getCodeDescription() != null) {
      out.name("codeDescription").beginObject();
      out.name("href").value(diagnostic.getCodeDescription().getHref());
      out.endObject();
    }
    if (diagnostic.getSource() != null) {
      out.name("source").value(diagnostic.getSource());
    }
    out.name("message").value(diagnostic.getMessage().getLeft());
    if (diagnostic.getTags() != null) {
      out.name("tags").beginArray();
      for (DiagnosticTag tag : diagnostic.getTags()) {
        out.value(tag.getValue());
      }
      out.endArray();
    }
    if (diagnostic.getRelatedInformation() != null) {
      out.name("relatedInformation").beginArray();
      for (DiagnosticRelatedInformation related : diagnostic.getRelatedInformation()) {
        related(out, related);
      }
      out.endArray();
    }
    if (diagnostic.getData() instanceof JsonElement data) {
      out.name("data");
      usual.gson().toJson(data, out);
    }
    out.endObject();
  }

  /** Whether it is of the shape this server gives its own. */
  private static boolean isPlain(Diagnostic diagnostic) {
    return diagnostic.getRange() != null
        && diagnostic.getMessage() != null
        && diagnostic.getMessage().isLeft()
        && (diagnostic.getCode() == null || diagnostic.getCode().isLeft())
        && (diagnostic.getData() == null || diagnostic.getData() instanceof JsonElement);
  }

  private static void related(JsonWriter out, DiagnosticRelatedInformation related)
      throws IOException {
    out.beginObject();
    out.name("location").beginObject();
    out.name("uri").value(related.getLocation().getUri());
    range(out, related.getLocation().getRange());
    out.endObject();
    out.name("message").value(related.getMessage());
    out.endObject();
  }

  private static void range(JsonWriter out, Range range) throws IOException {
    out.name("range").beginObject();
    position(out.name("start"), range.getStart());
    position(out.name("end"), range.getEnd());
    out.endObject();
  }

  private static void position(JsonWriter out, Position position) throws IOException {
    out.beginObject();
    out.name("line").value(position.getLine());
    out.name("character").value(position.getCharacter());
    out.endObject();
  }
}
