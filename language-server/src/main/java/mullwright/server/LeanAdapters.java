package mullwright.server;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextEdit;

/**
 * Hand-written JSON for the messages before the first answer and after every keystroke. What is
 * found by reflection costs each class's annotations and a proxy for each kind of them.
 */
final class LeanAdapters {
  private LeanAdapters() {}

  static void register(GsonBuilder gson) {
    gson.disableHtmlEscaping();
    gson.registerTypeAdapterFactory(new Factory());
  }

  private static final class Factory implements TypeAdapterFactory {
    @Override
    @SuppressWarnings("unchecked") // each adapter is made for the class asked about
    public <T> TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
      Class<? super T> asked = type.getRawType();
      if (asked == Diagnostic.class) {
        return (TypeAdapter<T>) new DiagnosticJson(new Usual<>(gson, this, Diagnostic.class));
      }
      if (asked == PublishDiagnosticsParams.class) {
        return (TypeAdapter<T>)
            new PublishedJson(new Usual<>(gson, this, PublishDiagnosticsParams.class));
      }
      if (asked == DidOpenTextDocumentParams.class) {
        return (TypeAdapter<T>)
            new OpenedJson(new Usual<>(gson, this, DidOpenTextDocumentParams.class));
      }
      // asked by name: the class itself is of no use to a start
      if (asked.getName().equals("org.eclipse.lsp4j.TextEdit")) {
        return (TypeAdapter<T>) new TextEditJson(new Usual<>(gson, this, TextEdit.class));
      }
      return null;
    }
  }

  /** The adapter found by reflection, made when it is asked for: for the other direction. */
  static final class Usual<T> {
    private final Gson gson;
    private final TypeAdapterFactory except;
    private final Class<T> type;

    private Usual(Gson gson, TypeAdapterFactory except, Class<T> type) {
      this.gson = gson;
      this.except = except;
      this.type = type;
    }

    Gson gson() {
      return gson;
    }

    T read(JsonReader in) throws IOException {
      return gson.getDelegateAdapter(except, TypeToken.get(type)).read(in);
    }

    void write(JsonWriter out, T value) throws IOException {
      gson.getDelegateAdapter(except, TypeToken.get(type)).write(out, value);
    }
  }
}
