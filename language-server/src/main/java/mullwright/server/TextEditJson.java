package mullwright.server;

import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import org.eclipse.lsp4j.AnnotatedTextEdit;
import org.eclipse.lsp4j.TextEdit;

/**
 * An edit of a document as JSON, with its annotation if it has one: LSP4J writes an edit that is
 * one of several kinds as the first of them, and loses what only an annotated edit has.
 */
final class TextEditJson extends TypeAdapter<TextEdit> {
  private final LeanAdapters.Usual<TextEdit> usual;

  TextEditJson(LeanAdapters.Usual<TextEdit> usual) {
    this.usual = usual;
  }

  @Override
  public void write(JsonWriter out, TextEdit edit) throws IOException {
    if (edit instanceof AnnotatedTextEdit annotated) {
      usual.gson().toJson(annotated, AnnotatedTextEdit.class, out);
    } else {
      usual.write(out, edit);
    }
  }

  @Override
  public TextEdit read(JsonReader in) throws IOException {
    return usual.read(in);
  }
}
