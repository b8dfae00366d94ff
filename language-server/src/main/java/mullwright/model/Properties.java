package mullwright.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.quantity.Length;
import mullwright.quantity.LengthReader;
import mullwright.quantity.Quantity;
import mullwright.syntax.Argument;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;

/**
 * The property lines of one block, matched against their {@link PartSchema}: phrases by property
 * word, values checked, names of parts noted. What does not fit is reported and left out.
 */
final class Properties {
  /** Words up to so many letters are near to too many others. */
  private static final int SHORT = 3;

  private final PartSchema schema;
  private final Reading reading;
  private final Origin origin;
  private final Map<String, List<Phrase>> phrases = new LinkedHashMap<>();
  private final Map<String, Given<String>> facts = new LinkedHashMap<>();
  private final Set<String> unread = new HashSet<>();
  private final Map<String, Origin> first = new LinkedHashMap<>();
  private int line;

  /**
   * Where and with whom properties are read.
   *
   * @param mentions takes the names of parts
   */
  record Reading(Spot spot, Scope scope, Collector collector, List<Mention> mentions) {
    ExpressionReader values() {
      return new ExpressionReader(scope, spot, collector);
    }

    Reading at(Spot other) {
      return new Reading(other, scope, collector, mentions);
    }
  }

  /**
   * @param origin of the block, for what is missing
   */
  Properties(PartSchema schema, Reading reading, Origin origin) {
    this.schema = schema;
    this.reading = reading;
    this.origin = origin;
  }

  Reading reading() {
    return reading;
  }

  Origin origin() {
    return origin;
  }

  /** Reads the lines; a block inside them only groups lines. */
  Properties read(List<Statement> statements) {
    for (Statement statement : statements) {
      if (statement.kind() == StatementKind.PROPERTY) {
        boolean groups = statement.block().isPresent() && statement.arguments().isEmpty();
        if (!groups || schema.find(statement.keyword().text()).isPresent()) {
          read(statement, reading);
        }
        statement.block().ifPresent(block -> read(block.statements()));
      }
    }
    return this;
  }

  /** Reads one line, wherever it stands. */
  void read(Statement statement, Reading with) {
    String word = statement.keyword().text();
    Origin at = with.spot().at(statement.keyword());
    Optional<PartSchema.Property> property = schema.find(word);
    if (property.isEmpty()) {
      unknown(statement, with, at);
      return;
    }
    Origin before = first.putIfAbsent(word, at);
    if (before != null && !property.get().repeats() && !several(word)) {
      with.collector().duplicate("property", word, before, at);
      return;
    }
    line++;
    List<Argument> arguments = statement.arguments();
    List<Phrase> of = phrases.computeIfAbsent(word, key -> new ArrayList<>());
    if (arguments.isEmpty()) {
      match(word, List.of(), statement.keyword().range(), with, statement).ifPresent(of::add);
    }
    for (Argument argument : arguments) {
      if (argument instanceof Argument.Phrase phrase) {
        match(word, phrase.parts(), phrase.range(), with, statement).ifPresent(of::add);
      }
    }
  }

  /** Some words open facts of their own by their second word; each may have its line. */
  private boolean several(String word) {
    return word.equals("metal") && schema == PartSchema.criteria();
  }

  private void unknown(Statement statement, Reading with, Origin at) {
    String word = statement.keyword().text();
    if (!schema.open() || nearlyKnown(word)) {
      List<String> known = NearNames.of(word, schemaWords());
      with.collector().problem(new ModelProblem.BadProperty(schema.kind(), word, "", known, at));
      return;
    }
    int start = statement.keyword().range().end();
    int end =
        statement.arguments().isEmpty()
            ? start
            : statement.arguments().get(statement.arguments().size() - 1).range().end();
    String text = with.spot().text(new TextRange(start, end)).strip();
    facts.putIfAbsent(word, Given.stated(text, with.spot().at(statement.range())));
  }

  /** True for a known word with one slip in it; facts of the drafter's own are other words. */
  private boolean nearlyKnown(String word) {
    return word.length() > SHORT
        && schemaWords().stream().anyMatch(known -> NearNames.distance(word, known, 1) == 1);
  }

  private Set<String> schemaWords() {
    Set<String> words = new TreeSet<>();
    schema.properties().forEach(property -> words.add(property.word()));
    return words;
  }

  private Optional<Phrase> match(
      String word,
      List<Argument.Phrase.Part> parts,
      TextRange range,
      Reading with,
      Statement statement) {
    Scope scope = with.scope();
    List<PhrasePattern> patterns = schema.patterns(word);
    for (int form = 0; form < patterns.size(); form++) {
      Optional<List<PhrasePattern.Capture>> captures =
          patterns.get(form).match(parts, name -> scope.find(name) != null);
      if (captures.isPresent()) {
        return Optional.of(new Phrase(form, line, captures.get(), range, statement, with));
      }
    }
    unread.add(word);
    Optional<String> next = swallowed(range, with);
    if (next.isPresent()) {
      first.putIfAbsent(next.get(), with.spot().at(range));
      unread.add(next.get());
      TextRange comma = comma(range, with).orElseThrow();
      with.collector()
          .problem(new ModelProblem.CommaAtEnd(word, next.get(), with.spot().at(comma)));
      return Optional.empty();
    }
    if (!with.spot().broken(statement.range())) {
      String pattern = nearest(word, parts, scope);
      with.collector()
          .problem(
              new ModelProblem.BadProperty(
                  schema.kind(), word, pattern, List.of(), with.spot().at(range)));
    }
    return Optional.empty();
  }

  /** The forms that what is written goes furthest with; all of them if it begins like none. */
  private String nearest(String word, List<Argument.Phrase.Part> parts, Scope scope) {
    List<PhrasePattern> patterns = schema.patterns(word);
    List<String> written = schema.find(word).orElseThrow().patterns();
    List<String> furthest = new ArrayList<>();
    int most = 0;
    for (int form = 0; form < patterns.size(); form++) {
      int reach = patterns.get(form).reach(parts, name -> scope.find(name) != null);
      if (reach > most) {
        most = reach;
        furthest.clear();
      }
      if (reach == most) {
        furthest.add(written.get(form));
      }
    }
    return String.join(" or ", furthest);
  }

  /** The property that a phrase begins with which a comma joined to the line above. */
  private Optional<String> swallowed(TextRange phrase, Reading with) {
    String text = with.spot().text(phrase);
    int end = 0;
    while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
      end++;
    }
    String word = text.substring(0, end);
    return schema.find(word).isPresent() && comma(phrase, with).isPresent()
        ? Optional.of(word)
        : Optional.empty();
  }

  /** The comma that ends the line above a phrase, if one does. */
  private static Optional<TextRange> comma(TextRange phrase, Reading with) {
    String above = with.spot().text(new TextRange(0, phrase.start()));
    int line = above.lastIndexOf('\n');
    if (line < 0 || !above.substring(line).isBlank()) {
      return Optional.empty();
    }
    String ended = above.substring(above.lastIndexOf('\n', line - 1) + 1, line);
    int remark = ended.indexOf("//");
    String said = (remark < 0 ? ended : ended.substring(0, remark)).stripTrailing();
    int comma = line - ended.length() + said.length() - 1;
    return said.endsWith(",") ? Optional.of(new TextRange(comma, comma + 1)) : Optional.empty();
  }

  /** Tells that a phrase says nothing where it stands. */
  void saysNothing(String word, Phrase phrase) {
    String pattern = schema.find(word).orElseThrow().pattern();
    reading
        .collector()
        .problem(
            new ModelProblem.BadProperty(schema.kind(), word, pattern, List.of(), phrase.origin()));
  }

  /** True if a phrase of the property could not be read. */
  boolean unread(String word) {
    return unread.contains(word);
  }

  /** True if the property stands there, readable or not. */
  boolean has(String word) {
    return first.containsKey(word);
  }

  /** Its phrases that could be read, in the order of the text. */
  List<Phrase> phrases(String word) {
    return phrases.getOrDefault(word, List.of());
  }

  /** Words the schema does not know, as written. */
  Map<String, Given<String>> facts() {
    return facts;
  }

  private Optional<Phrase> first(String word) {
    List<Phrase> all = phrases(word);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
  }

  Optional<Given<Length>> length(String word) {
    return first(word).flatMap(phrase -> phrase.length(0));
  }

  /** The length, or the schema's default. */
  Given<Length> lengthOr(String word) {
    return length(word).orElseGet(() -> assumed(word));
  }

  /** The schema's default. */
  Given<Length> assumed(String word) {
    PartSchema.Default taken = schema.find(word).orElseThrow().byDefault().orElseThrow();
    Length length = LengthReader.read(taken.text()).value().orElseThrow();
    return Given.assumed(length, origin, taken.source());
  }

  /** The length; if it is not stated that is reported, and nothing long stands for it. */
  Given<Length> needed(String word, String where) {
    Optional<Given<Length>> stated = length(word);
    if (stated.isEmpty() && !has(word)) {
      reading.collector().missing(where, "its " + word, word + " 2 1/2\"", origin);
    }
    return stated.orElseGet(() -> Given.assumed(Length.ZERO, origin, "not stated"));
  }

  /** The lengths of all phrases. */
  List<Given<Length>> lengths(String word) {
    List<Given<Length>> lengths = new ArrayList<>();
    phrases(word).forEach(phrase -> phrase.length(0).ifPresent(lengths::add));
    return lengths;
  }

  /** The lengths a part is bought in. */
  List<Part.Stock> stock() {
    List<Part.Stock> stock = new ArrayList<>();
    for (Phrase phrase : phrases("stock")) {
      Optional<Given<Length>> length = phrase.length(0);
      Optional<Given<Integer>> cost =
          phrase.size() > 1 ? phrase.count(1, Part.Stock.MOST_COST) : Optional.empty();
      if (length.isPresent() && length.get().value().signum() <= 0) {
        reading
            .collector()
            .misplaced(
                "a stock length is no length", "a bar is longer than 0\"", length.get().origin());
      } else {
        length.ifPresent(bar -> stock.add(new Part.Stock(bar, cost)));
      }
    }
    return stock;
  }

  /**
   * The length for a side: of the phrase that names it, else of the one that names none.
   *
   * @param names the side's words
   */
  Optional<Given<Length>> side(String word, String... names) {
    Optional<Given<Length>> all = Optional.empty();
    for (Phrase phrase : phrases(word)) {
      if (phrase.word(1).isEmpty()) {
        all = phrase.length(0);
      } else if (List.of(names).contains(phrase.word(1).get().value())) {
        return phrase.length(0);
      }
    }
    return all;
  }

  Optional<Given<Quantity>> quantity(String word) {
    return first(word).flatMap(phrase -> phrase.quantity(0));
  }

  /** A word, a name or text. */
  Optional<Given<String>> word(String word) {
    return first(word).flatMap(phrase -> phrase.word(0));
  }

  /** The word, or the schema's default. */
  Given<String> wordOr(String word) {
    return word(word)
        .orElseGet(
            () -> {
              Optional<PartSchema.Default> taken = schema.find(word).orElseThrow().byDefault();
              return Given.assumed(
                  taken.map(PartSchema.Default::text).orElse(""),
                  origin,
                  taken.map(PartSchema.Default::source).orElse("not stated"));
            });
  }
}
