package mullwright.model;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.syntax.Argument;
import mullwright.syntax.Expression;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;

/** One phrase of a property that fits its pattern. */
final class Phrase {
  private final int form;
  private final int line;
  private final List<PhrasePattern.Capture> captures;
  private final TextRange range;
  private final Statement statement;
  private final String property;
  private final Properties.Reading reading;

  Phrase(
      int form,
      int line,
      List<PhrasePattern.Capture> captures,
      TextRange range,
      Statement statement,
      Properties.Reading reading) {
    this.form = form;
    this.line = line;
    this.captures = captures;
    this.range = range;
    this.statement = statement;
    this.property = statement.keyword().text();
    this.reading = reading;
    captures.forEach(this::mention);
  }

  private void mention(PhrasePattern.Capture capture) {
    if (capture.part() != null) {
      reading
          .mentions()
          .add(
              new Mention(
                  List.of(capture.part()),
                  PhrasePattern.word(capture.parts().get(0)),
                  at(capture)));
    }
  }

  private Origin at(PhrasePattern.Capture capture) {
    TextRange start = capture.parts().get(0).range();
    return reading.spot().at(start.to(capture.parts().get(capture.parts().size() - 1).range()));
  }

  /** Which of the property's patterns it fits. */
  int form() {
    return form;
  }

  /** Phrases of one line share its number. */
  int line() {
    return line;
  }

  Properties.Reading reading() {
    return reading;
  }

  /** The line as a statement that names things. */
  Said said() {
    return new Said(statement, reading.spot(), reading.scope(), "", 0, false);
  }

  /** True if the value of that index is of that kind, as far as it can be computed. */
  boolean isOf(int index, Kind kind) {
    Value value =
        new ExpressionReader(reading.scope(), reading.spot(), new Collector())
            .value(expression(captures.get(index)), kind);
    return value != null && !value.bare() && value.quantity().is(kind);
  }

  Origin origin() {
    return reading.spot().at(range);
  }

  /** How many values it has. */
  int size() {
    return captures.size();
  }

  PhrasePattern.Capture capture(int index) {
    return captures.get(index);
  }

  /** The captured value of that index that is a length. */
  Optional<Given<Length>> length(int index) {
    if (index >= captures.size()) {
      return Optional.empty();
    }
    PhrasePattern.Capture capture = captures.get(index);
    return reading
        .values()
        .length(expression(capture), property)
        .map(length -> Given.stated(length, at(capture)));
  }

  /** The captured quantity of that index, of the pattern's kind. */
  Optional<Given<Quantity>> quantity(int index) {
    PhrasePattern.Capture capture = captures.get(index);
    return quantity(index, capture.kind());
  }

  Optional<Given<Quantity>> quantity(int index, Kind kind) {
    PhrasePattern.Capture capture = captures.get(index);
    return reading
        .values()
        .quantity(expression(capture), kind, kind == Kind.TEMPERATURE ? kind.words() : property)
        .map(quantity -> Given.stated(quantity, at(capture)));
  }

  /** The captured whole number of that index, at least 1; more than {@code most} is reported. */
  Optional<Given<Integer>> count(int index, int most) {
    PhrasePattern.Capture capture = captures.get(index);
    return expression(capture) instanceof Expression.Literal literal
        ? reading
            .values()
            .count(literal, property, most)
            .map(count -> Given.stated(count, at(capture)))
        : Optional.empty();
  }

  /** The captured words of that index, one blank between where any stands. */
  Optional<Given<String>> word(int index) {
    if (index >= captures.size()) {
      return Optional.empty();
    }
    PhrasePattern.Capture capture = captures.get(index);
    String text =
        capture.parts().size() == 1 ? PhrasePattern.word(capture.parts().get(0)) : text(capture);
    return Optional.of(Given.stated(text.isEmpty() ? text(capture) : text, at(capture)));
  }

  private String text(PhrasePattern.Capture capture) {
    StringBuilder text = new StringBuilder();
    int end = at(capture).range().start();
    for (Argument.Phrase.Part part : capture.parts()) {
      text.append(part.range().start() > end ? " " : "").append(reading.spot().text(part.range()));
      end = part.range().end();
    }
    return text.toString();
  }

  private static Expression expression(PhrasePattern.Capture capture) {
    Argument.Phrase.Part part = capture.parts().get(0);
    return part instanceof Argument.Phrase.Part.Measured measured
        ? measured.expression()
        : new Expression.Reference(((Argument.Phrase.Part.Plain) part).word());
  }
}
