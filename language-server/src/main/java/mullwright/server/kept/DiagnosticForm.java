package mullwright.server.kept;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.workspace.Packing;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Diagnostics field by field, as this server makes them. What comes back equals what was written,
 * or it is not written.
 */
final class DiagnosticForm {
  private static final int NONE = -1;

  private DiagnosticForm() {}

  static void write(DataOutputStream out, List<Diagnostic> diagnostics) throws IOException {
    out.writeInt(diagnostics.size());
    for (Diagnostic diagnostic : diagnostics) {
      if (diagnostic.getMessage().isRight()
          || diagnostic.getCode() == null
          || diagnostic.getCode().isRight()) {
        throw new IOException("no diagnostic of ours: " + diagnostic);
      }
      range(out, diagnostic.getRange());
      out.writeByte(diagnostic.getSeverity().getValue());
      KeptForm.text(out, diagnostic.getSource());
      KeptForm.text(out, diagnostic.getCode().getLeft());
      KeptForm.text(out, diagnostic.getMessage().getLeft());
      DiagnosticCodeDescription page = diagnostic.getCodeDescription();
      out.writeBoolean(page != null);
      if (page != null) {
        KeptForm.text(out, page.getHref());
      }
      tags(out, diagnostic.getTags());
      related(out, diagnostic.getRelatedInformation());
      data(out, diagnostic.getData());
    }
  }

  static List<Diagnostic> read(DataInputStream in) throws IOException {
    List<Diagnostic> diagnostics = new ArrayList<>();
    for (int left = Packing.count(in); left > 0; left--) {
      Diagnostic diagnostic = new Diagnostic();
      diagnostic.setRange(range(in));
      diagnostic.setSeverity(DiagnosticSeverity.forValue(in.readByte()));
      diagnostic.setSource(Packing.text(in));
      diagnostic.setCode(Either.forLeft(Packing.text(in)));
      diagnostic.setMessage(Either.forLeft(Packing.text(in)));
      if (in.readBoolean()) {
        diagnostic.setCodeDescription(new DiagnosticCodeDescription(Packing.text(in)));
      }
      diagnostic.setTags(tags(in));
      diagnostic.setRelatedInformation(related(in));
      diagnostic.setData(data(in));
      diagnostics.add(diagnostic);
    }
    return diagnostics;
  }

  private static void tags(DataOutputStream out, List<DiagnosticTag> tags) throws IOException {
    out.writeInt(tags == null ? NONE : tags.size());
    if (tags != null) {
      for (DiagnosticTag tag : tags) {
        out.writeByte(tag.getValue());
      }
    }
  }

  private static List<DiagnosticTag> tags(DataInputStream in) throws IOException {
    int count = in.readInt();
    if (count == NONE) {
      return null;
    }
    List<DiagnosticTag> tags = new ArrayList<>();
    for (int left = count; left > 0; left--) {
      tags.add(DiagnosticTag.forValue(in.readByte()));
    }
    return tags;
  }

  private static void related(DataOutputStream out, List<DiagnosticRelatedInformation> places)
      throws IOException {
    out.writeInt(places == null ? NONE : places.size());
    if (places != null) {
      for (DiagnosticRelatedInformation place : places) {
        KeptForm.text(out, place.getLocation().getUri());
        range(out, place.getLocation().getRange());
        KeptForm.text(out, place.getMessage());
      }
    }
  }

  private static List<DiagnosticRelatedInformation> related(DataInputStream in) throws IOException {
    int count = in.readInt();
    if (count == NONE) {
      return null;
    }
    List<DiagnosticRelatedInformation> places = new ArrayList<>();
    for (int left = count; left > 0; left--) {
      Location location = new Location(Packing.text(in), range(in));
      places.add(new DiagnosticRelatedInformation(location, Packing.text(in)));
    }
    return places;
  }

  /** An object of whole numbers. */
  private static void data(DataOutputStream out, Object data) throws IOException {
    if (data == null) {
      out.writeInt(NONE);
      return;
    }
    if (!(data instanceof JsonObject object)) {
      throw new IOException("no data of ours: " + data);
    }
    out.writeInt(object.size());
    for (Map.Entry<String, JsonElement> field : object.entrySet()) {
      if (!(field.getValue() instanceof JsonPrimitive value) || !value.isNumber()) {
        throw new IOException("no data of ours: " + data);
      }
      KeptForm.text(out, field.getKey());
      out.writeInt(value.getAsInt());
    }
  }

  private static JsonObject data(DataInputStream in) throws IOException {
    int count = in.readInt();
    if (count == NONE) {
      return null;
    }
    JsonObject data = new JsonObject();
    for (int left = count; left > 0; left--) {
      data.addProperty(Packing.text(in), in.readInt());
    }
    return data;
  }

  private static void range(DataOutputStream out, Range range) throws IOException {
    out.writeInt(range.getStart().getLine());
    out.writeInt(range.getStart().getCharacter());
    out.writeInt(range.getEnd().getLine());
    out.writeInt(range.getEnd().getCharacter());
  }

  private static Range range(DataInputStream in) throws IOException {
    return new Range(
        new Position(in.readInt(), in.readInt()), new Position(in.readInt(), in.readInt()));
  }
}
