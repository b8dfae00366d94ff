package mullwright.server;

import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentItem;

/**
 * Reads an opened document (LSP 3.17, "DidOpenTextDocument Notification"). What is missing stays
 * missing and what is not known is passed over, as where it is found by reflection.
 */
final class OpenedJson extends TypeAdapter<DidOpenTextDocumentParams> {
  private final LeanAdapters.Usual<DidOpenTextDocumentParams> usual;

  OpenedJson(LeanAdapters.Usual<DidOpenTextDocumentParams> usual) {
    this.usual = usual;
  }

  @Override
  public void write(JsonWriter out, DidOpenTextDocumentParams opened) throws IOException {
    usual.write(out, opened);
  }

  @Override
  public DidOpenTextDocumentParams read(JsonReader in) throws IOException {
    DidOpenTextDocumentParams opened = new DidOpenTextDocumentParams();
    in.beginObject();
    while (in.hasNext()) {
      if (in.nextName().equals("textDocument") && in.peek() != JsonToken.NULL) {
        opened.setTextDocument(document(in));
      } else {
        in.skipValue();
      }
    }
    in.endObject();
    return opened;
  }

  private static TextDocumentItem document(JsonReader in) throws IOException {
    TextDocumentItem document = new TextDocumentItem();
    in.beginObject();
    while (in.hasNext()) {
      String name = in.nextName();
      if (in.peek() == JsonToken.NULL) {
        in.nextNull();
        continue;
      }
      switch (name) {
        case "uri" -> document.setUri(in.nextString());
        case "languageId" -> document.setLanguageId(in.nextString());
        case "version" -> document.setVersion(in.nextInt());
        case "text" -> document.setText(in.nextString());
        default -> in.skipValue();
      }
    }
    in.endObject();
    return document;
  }
}
