package mullwright.server.feature;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.annotations.JsonAdapter;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;

/**
 * The answer to {@code workspace/diagnostic}. The protocol wants the version of a document that is
 * not open as null and not left away, which the library's own type cannot say.
 *
 * @param items the library's reports
 */
@JsonAdapter(WorkspaceReports.Adapters.class)
record WorkspaceReports(List<Object> items) {

  /** Makes what writes it. */
  static final class Adapters implements TypeAdapterFactory {
    @Override
    public <T> TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
      return new TypeAdapter<>() {
        @Override
        public void write(JsonWriter out, T value) throws IOException {
          boolean nulls = out.getSerializeNulls();
          out.setSerializeNulls(true);
          out.beginObject().name("items").beginArray();
          for (Object item : ((WorkspaceReports) value).items()) {
            JsonObject report = gson.toJsonTree(item).getAsJsonObject();
            if (!report.has("version")) {
              report.add("version", JsonNull.INSTANCE);
            }
            gson.getAdapter(JsonElement.class).write(out, report);
          }
          out.endArray().endObject();
          out.setSerializeNulls(nulls);
        }

        @Override
        public T read(JsonReader in) {
          throw new UnsupportedOperationException("only ever sent");
        }
      };
    }
  }
}
