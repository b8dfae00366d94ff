package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.syntax.TextRange;

/** Makes a glass: its layers from outdoors in the order of the text, with what is said of them. */
final class GlassPart {
  /** A designation in inches stands for a nominal metric thickness (ASTM E1300, from memory). */
  private static final Map<Length, Length> DESIGNATIONS =
      designations(
          Length.ofInches(3, 32), Length.ofMillimetres(5, 2),
          Length.ofInches(1, 8), Length.ofMillimetres(3),
          Length.ofInches(5, 32), Length.ofMillimetres(4),
          Length.ofInches(3, 16), Length.ofMillimetres(5),
          Length.ofInches(1, 4), Length.ofMillimetres(6),
          Length.ofInches(5, 16), Length.ofMillimetres(8),
          Length.ofInches(3, 8), Length.ofMillimetres(10),
          Length.ofInches(1, 2), Length.ofMillimetres(12),
          Length.ofInches(5, 8), Length.ofMillimetres(16),
          Length.ofInches(3, 4), Length.ofMillimetres(19),
          Length.ofInches(7, 8), Length.ofMillimetres(22),
          Length.ofInches(1), Length.ofMillimetres(25));

  private static Map<Length, Length> designations(Length... inchThenMetric) {
    Map<Length, Length> designations = new HashMap<>();
    for (int i = 0; i < inchThenMetric.length; i += 2) {
      designations.put(inchThenMetric[i], inchThenMetric[i + 1]);
    }
    return Map.copyOf(designations);
  }

  private final String name;
  private final Properties properties;
  private final List<Layer> layers = new ArrayList<>();

  GlassPart(String name, Properties properties) {
    this.name = name;
    this.properties = properties;
  }

  /** A layer while it is read. */
  private record Layer(String what, Length thickness, List<String> words, Origin origin) {}

  Part.Glass read() {
    for (String what : List.of("ply", "space", "interlayer")) {
      layers(what);
    }
    layers.sort((one, other) -> Origin.inText(one.origin(), other.origin()));
    properties.phrases("coating").forEach(this::coat);
    Optional<Phrase> limit = properties.phrases("limit").stream().findFirst();
    Optional<Phrase> least = properties.phrases("least").stream().findFirst();
    if (layers.isEmpty() && !properties.has("ply")) {
      properties
          .reading()
          .collector()
          .missing("glass " + name, "its plies", "ply 6 mm clear", properties.origin());
    }
    return new Part.Glass(
        name,
        properties.origin(),
        layers.stream()
            .map(
                layer ->
                    new Part.Layer(
                        layer.what(),
                        layer.thickness(),
                        List.copyOf(layer.words()),
                        layer.origin()))
            .toList(),
        opacified(),
        safety(),
        properties.quantity("U"),
        limit.flatMap(phrase -> phrase.length(0)),
        limit.flatMap(phrase -> phrase.length(1)),
        properties.length("bite"),
        properties.quantity("shear-modulus"),
        least.flatMap(phrase -> phrase.length(0)),
        least.flatMap(phrase -> phrase.length(1)),
        properties.quantity("largest-area"),
        properties.quantity("edge-psi"),
        properties.length("billed"));
  }

  /** A phrase with a thickness begins a layer, one without goes on with its words. */
  private void layers(String what) {
    Layer last = null;
    for (Phrase phrase : properties.phrases(what)) {
      if (phrase.form() == 0) {
        Optional<Given<Length>> thickness = phrase.length(0);
        if (thickness.isEmpty()) {
          last = null;
          continue;
        }
        Length stated = thickness.get().value();
        Length nominal = what.equals("ply") ? DESIGNATIONS.getOrDefault(stated, stated) : stated;
        last = new Layer(what, nominal, new ArrayList<>(), phrase.origin());
        layers.add(last);
        addWords(last, phrase, 1);
      } else if (last != null) {
        addWords(last, phrase, 0);
      }
    }
  }

  private void addWords(Layer layer, Phrase phrase, int from) {
    for (int i = from; i < phrase.size(); i++) {
      Optional<Given<String>> words = phrase.word(i);
      words.map(Given::value).ifPresent(layer.words()::add);
      if (layer.what().equals("ply")) {
        words.ifPresent(this::look);
      }
    }
  }

  /** A slip in a treatment would count as no treatment, and nobody would see it. */
  private void look(Given<String> words) {
    Origin at = words.origin();
    String written = properties.reading().spot().text(at.range());
    int from = 0;
    for (String word : words.value().split(" ")) {
      int found = Math.max(from, written.indexOf(word, from));
      int start = at.range().start() + found;
      from = found + word.length();
      List<String> meant = GlassWords.meant(word);
      if (!meant.isEmpty()) {
        Origin there =
            new Origin(at.file(), at.segment(), new TextRange(start, start + word.length()));
        properties.reading().collector().unknown(GlassWords.KIND, word, meant, there);
      }
    }
  }

  /** Says a coating on the ply whose surface it is on. Plies that are laminated are one pane. */
  private void coat(Phrase phrase) {
    int surface = surface(phrase, 1);
    List<List<Layer>> panes = new ArrayList<>();
    boolean joined = false;
    for (Layer layer : layers) {
      if (layer.what().equals("ply")) {
        if (!joined || panes.isEmpty()) {
          panes.add(new ArrayList<>());
        }
        panes.get(panes.size() - 1).add(layer);
      }
      joined = layer.what().equals("interlayer");
    }
    int pane = (surface - 1) / 2;
    if (surface < 1 || pane >= panes.size()) {
      properties
          .reading()
          .collector()
          .misplaced(
              "glass " + name + " has no surface " + surface,
              "surfaces count from outdoors, two to a pane",
              phrase.origin());
      return;
    }
    List<Layer> plies = panes.get(pane);
    Layer ply = surface % 2 == 1 ? plies.get(0) : plies.get(plies.size() - 1);
    String coating = phrase.word(0).map(Given::value).orElse("");
    ply.words().add(coating + " surface " + surface);
  }

  private static int surface(Phrase phrase, int index) {
    return phrase
        .quantity(index, Kind.RATIO)
        .map(number -> number.value().si())
        .filter(number -> number.isWhole() && number.numerator().bitLength() < 16)
        .map(number -> number.numerator().intValueExact())
        .orElse(-1);
  }

  private Given<Boolean> opacified() {
    List<Phrase> stated = properties.phrases("opacified");
    return stated.isEmpty()
        ? Given.assumed(false, properties.origin(), "not stated")
        : Given.stated(true, stated.get(0).origin());
  }

  private Given<Boolean> safety() {
    return properties
        .word("safety")
        .map(word -> Given.stated(word.value().equals("yes"), word.origin()))
        .orElseGet(() -> Given.assumed(false, properties.origin(), "not stated"));
  }
}
