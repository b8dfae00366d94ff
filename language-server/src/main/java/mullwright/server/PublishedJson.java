package mullwright.server;

import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;

/** Writes published diagnostics (LSP 3.17, "PublishDiagnostics Notification"). */
final class PublishedJson extends TypeAdapter<PublishDiagnosticsParams> {
  private final LeanAdapters.Usual<PublishDiagnosticsParams> usual;
  private final TypeAdapter<Diagnostic> diagnostics;

  PublishedJson(LeanAdapters.Usual<PublishDiagnosticsParams> usual) {
    this.usual = usual;
    this.diagnostics = usual.gson().getAdapter(Diagnostic.class);
  }

  @Override
  public PublishDiagnosticsParams read(JsonReader in) throws IOException {
    return usual.read(in);
  }

  @Override
  public void write(JsonWriter out, PublishDiagnosticsParams published) throws IOException {
    if (published == null || published.getDiagnostics() == null) {
      usual.write(out, published);
      return;
    }
    out.beginObject();
    out.name("uri").value(published.getUri());
    out.name("diagnostics").beginArray();
    for (Diagnostic diagnostic : published.getDiagnostics()) {
      diagnostics.write(out, diagnostic);
    }
    out.endArray();
    if (published.getVersion() != null) {
      out.name("version").value(published.getVersion());
    }
    out.endObject();
  }
}
