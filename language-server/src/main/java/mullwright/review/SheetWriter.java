package mullwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.model.Given;
import mullwright.model.Height;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** Takes facts down, subject by subject. */
final class SheetWriter {
  private final TreeMap<Fact, Value> facts = new TreeMap<>();
  private final WallNames names;

  SheetWriter(WallNames names) {
    this.names = names;
  }

  WallNames names() {
    return names;
  }

  FactSheet sheet() {
    return new FactSheet(facts);
  }

  /** What was said of a subject so far. */
  List<Value> said(Subject subject) {
    List<Value> said = new ArrayList<>();
    for (Map.Entry<Fact, Value> entry : facts.tailMap(new Fact(subject, "")).entrySet()) {
      if (!entry.getKey().subject().equals(subject)) {
        break;
      }
      said.add(entry.getValue());
    }
    return said;
  }

  /** A subject that was told already gets the next free number, as two splices of one place. */
  Subject begin(Topic topic, Name... named) {
    Subject subject = Subject.of(topic, named);
    for (int next = 2; facts.containsKey(new Fact(subject, Fact.THERE)); next++) {
      Name[] more = java.util.Arrays.copyOf(named, named.length + 1);
      more[named.length] = Name.other("no. " + next);
      subject = Subject.of(topic, more);
    }
    put(subject, Fact.THERE, new Value.Words(topic.word()));
    return subject;
  }

  void put(Subject subject, String property, Value value) {
    facts.put(new Fact(subject, property), value);
  }

  void words(Subject subject, String property, String text) {
    put(subject, property, new Value.Words(text));
  }

  void word(Subject subject, String property, Optional<Given<String>> given) {
    given.ifPresent(value -> words(subject, property, value.value()));
  }

  void size(Subject subject, String property, Length length) {
    put(subject, property, new Value.Size(length));
  }

  void length(Subject subject, String property, Optional<Given<Length>> given) {
    given.ifPresent(value -> size(subject, property, value.value()));
  }

  void amount(Subject subject, String property, Kind kind, Optional<Given<Quantity>> given) {
    given.ifPresent(value -> put(subject, property, new Value.Amount(value.value(), kind)));
  }

  void number(Subject subject, String property, Optional<Given<Double>> given) {
    given.ifPresent(
        value -> {
          Quantity ratio = Quantity.ofSi(value.value(), Kind.RATIO);
          put(subject, property, new Value.Amount(ratio, Kind.RATIO));
        });
  }

  void place(Subject subject, String property, Height height) {
    put(subject, property, names.place(height));
  }

  void place(Subject subject, String property, Optional<Height> height) {
    height.ifPresent(at -> place(subject, property, at));
  }
}
