package mullwright.drawing.pdf;

import java.util.EnumMap;
import java.util.Map;
import mullwright.drawing.Layer;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** The layers of a document, by kind; a reader can switch each off on all pages. */
final class PdfLayers {
  private final Map<Layer, PDOptionalContentGroup> groups = new EnumMap<>(Layer.class);

  PDOptionalContentGroup of(Layer layer) {
    return groups.computeIfAbsent(layer, it -> new PDOptionalContentGroup(it.word()));
  }

  PDOptionalContentProperties properties() {
    PDOptionalContentProperties properties = new PDOptionalContentProperties();
    groups.values().forEach(properties::addGroup);
    return properties;
  }
}
