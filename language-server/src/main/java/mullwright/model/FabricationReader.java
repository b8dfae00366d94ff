package mullwright.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;

/** Makes the shop's rules from layers of property lines; a later layer goes over an earlier one. */
final class FabricationReader {
  private FabricationReader() {}

  /**
   * @param layers at least one, perhaps empty
   */
  static Fabrication read(List<Properties> layers) {
    Map<String, Given<String>> facts = new LinkedHashMap<>();
    layers.forEach(layer -> facts.putAll(layer.facts()));
    return new Fabrication(
        length(layers, "kerf"), length(layers, "end-trim"), length(layers, "least-drop"), facts);
  }

  private static Given<Length> length(List<Properties> layers, String word) {
    for (int i = layers.size() - 1; i >= 0; i--) {
      Optional<Given<Length>> stated = layers.get(i).length(word);
      if (stated.isPresent()) {
        return stated.get();
      }
    }
    return layers.get(layers.size() - 1).lengthOr(word);
  }
}
