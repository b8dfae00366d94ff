package mullwright.model;

import java.util.ArrayList;
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
        length(layers, "kerf"),
        length(layers, "end-trim"),
        length(layers, "least-drop"),
        last(layers, "pieces-per-bar")
            .flatMap(layer -> layer.phrases("pieces-per-bar").stream().findFirst())
            .flatMap(phrase -> phrase.count(0, Fabrication.MOST_COUNT)),
        last(layers, "on-hand").map(FabricationReader::onHand).orElse(List.of()),
        stated(layers, "cut-tolerance"),
        stated(layers, "hole-tolerance"),
        stated(layers, "perimeter-joint"),
        shares(layers, "waste"),
        shares(layers, "attic"),
        facts);
  }

  /** The layer that has the last word on a property. */
  private static Optional<Properties> last(List<Properties> layers, String word) {
    for (int i = layers.size() - 1; i >= 0; i--) {
      if (layers.get(i).has(word)) {
        return Optional.of(layers.get(i));
      }
    }
    return Optional.empty();
  }

  private static List<Fabrication.OnHand> onHand(Properties layer) {
    List<Fabrication.OnHand> bars = new ArrayList<>();
    for (Phrase phrase : layer.phrases("on-hand")) {
      Optional<Given<Integer>> count = phrase.count(0, Fabrication.MOST_COUNT);
      Optional<Given<Length>> length = phrase.length(1);
      Optional<Given<String>> part = phrase.word(2);
      if (length.isPresent() && length.get().value().signum() <= 0) {
        layer
            .reading()
            .collector()
            .misplaced(
                "a bar on hand has no length", "a bar is longer than 0\"", length.get().origin());
      } else if (count.isPresent() && length.isPresent() && part.isPresent()) {
        bars.add(
            new Fabrication.OnHand(
                count.get().value(), length.get(), part.get(), phrase.word(3), phrase.origin()));
      }
    }
    return bars;
  }

  private static List<Fabrication.Share> shares(List<Properties> layers, String word) {
    List<Fabrication.Share> shares = new ArrayList<>();
    last(layers, word)
        .ifPresent(
            layer ->
                layer
                    .phrases(word)
                    .forEach(
                        phrase ->
                            phrase
                                .quantity(0)
                                .ifPresent(
                                    share ->
                                        shares.add(
                                            new Fabrication.Share(
                                                phrase.word(1).map(Given::value).orElse(""),
                                                share)))));
    return shares;
  }

  private static Given<Length> length(List<Properties> layers, String word) {
    return stated(layers, word).orElseGet(() -> layers.get(layers.size() - 1).assumed(word));
  }

  private static Optional<Given<Length>> stated(List<Properties> layers, String word) {
    for (int i = layers.size() - 1; i >= 0; i--) {
      Optional<Given<Length>> stated = layers.get(i).length(word);
      if (stated.isPresent() && stated.get().value().signum() >= 0) {
        return stated;
      }
      if (stated.isPresent()) {
        layers
            .get(i)
            .reading()
            .collector()
            .misplaced(
                word + " is negative",
                "what a cut takes and what a drop must have are 0\" or more",
                stated.get().origin());
      }
    }
    return Optional.empty();
  }
}
