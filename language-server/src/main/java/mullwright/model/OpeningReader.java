package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Word;

/** Reads {@code opening}: doors, voids, louvres and vents by bays and heights. */
final class OpeningReader {
  private final GridNames names;
  private final Collector collector;
  private final Map<String, Entry> openings = new LinkedHashMap<>();

  OpeningReader(GridNames names, Collector collector) {
    this.names = names;
    this.collector = collector;
  }

  private record Entry(Symbol symbol, int layer, List<Grid.Opening> parts) {}

  /** A rectangle of an opening: its bays, from where to where. */
  private record Reach(List<Integer> bays, Height bottom, Height top) {}

  List<Grid.Opening> read(List<Said> statements) {
    statements.forEach(this::read);
    List<Grid.Opening> all = new ArrayList<>();
    openings.values().forEach(entry -> all.addAll(entry.parts()));
    return all;
  }

  private void read(Said said) {
    List<Word> words = new ArrayList<>();
    for (Argument argument : said.statement().arguments()) {
      if (argument instanceof Argument.Name name) {
        words.add(name.word());
      }
    }
    if (words.size() < 2) {
      return;
    }
    Optional<Grid.OpeningKind> kind = kind(words.get(0), said);
    Word name = words.get(1);
    Symbol symbol = new Symbol(Symbol.Kind.OPENING, said.wall(), name.text(), said.spot().at(name));
    Entry before = openings.get(name.text());
    if (before != null && before.layer() == said.layer()) {
      collector.duplicate(
          "opening", name.text(), before.symbol().definition(), symbol.definition());
      return;
    }
    collector.defines(symbol, symbol.definition());
    List<Grid.Opening> parts = kind.map(known -> parts(known, name.text(), said)).orElse(List.of());
    openings.put(name.text(), new Entry(symbol, said.layer(), parts));
  }

  private Optional<Grid.OpeningKind> kind(Word word, Said said) {
    List<String> known = new ArrayList<>();
    for (Grid.OpeningKind kind : Grid.OpeningKind.values()) {
      String spelling = kind.name().toLowerCase(Locale.ROOT);
      if (spelling.equals(word.text())) {
        return Optional.of(kind);
      }
      known.add(spelling);
    }
    collector.unknown("kind of opening", word.text(), known, said.spot().at(word));
    return Optional.empty();
  }

  private List<Grid.Opening> parts(Grid.OpeningKind kind, String name, Said said) {
    Optional<Clause.Selecting> bays = said.clause(ClauseWord.BAYS, Clause.Selecting.class);
    if (bays.isEmpty()) {
      if (!said.broken()) {
        collector.missing(said.words(), "its bays", "bays 10..11", said.origin());
      }
      return List.of();
    }
    int[] chosen =
        new SelectionReader(said, collector)
            .bays(bays.get().selection(), names.lines(), names.bays())
            .indices();
    Arrays.sort(chosen);
    List<Reach> reaches = chosen.length == 0 ? List.of() : reaches(said, chosen);
    if (reaches.isEmpty()) {
      return List.of();
    }
    Optional<Given<Length>> clear = clear(said);
    Optional<Given<Quantity>> mass = mass(said);
    boolean byOthers = said.has(ClauseWord.BY_OTHERS);
    List<Grid.Opening> parts = new ArrayList<>();
    for (Reach reach : reaches) {
      parts.add(
          new Grid.Opening(
              kind,
              name,
              reach.bays(),
              reach.bottom(),
              reach.top(),
              byOthers,
              clear,
              mass,
              said.nameOrigin()));
    }
    return parts;
  }

  private List<Reach> reaches(Said said, int[] bays) {
    List<Reach> reaches = new ArrayList<>();
    Optional<Clause.Selecting> rows = said.clause(ClauseWord.ROWS, Clause.Selecting.class);
    Optional<Clause.Extent> extent = said.clause(ClauseWord.FROM, Clause.Extent.class);
    if (rows.isPresent()) {
      Origin origin = said.spot().at(rows.get().selection().range());
      List<int[]> spaces =
          new SelectionReader(said, collector).spaces(rows.get().selection(), names.rows());
      for (int[] space : spaces) {
        reaches.addAll(between(space, bays, origin));
      }
    } else if (extent.isPresent()) {
      BitSet all = new BitSet();
      Arrays.stream(bays).forEach(all::set);
      names
          .extent(said, all, collector)
          .ifPresent(
              found ->
                  reaches.add(
                      new Reach(
                          Arrays.stream(bays).boxed().toList(),
                          found.from().height(),
                          found.to().height())));
    } else if (!said.broken()) {
      collector.missing(said.words(), "its height", "from L1 to door-head", said.origin());
    }
    return reaches;
  }

  /** One reach for all bays, or several where one of the rows steps. */
  private List<Reach> between(int[] space, int[] bays, Origin origin) {
    Map<List<Integer>, List<Integer>> byStretch = new LinkedHashMap<>();
    for (int bay : bays) {
      int bottom = names.order().inBay(space[0], bay);
      int top = names.order().inBay(space[1], bay);
      byStretch.computeIfAbsent(List.of(bottom, top), rows -> new ArrayList<>()).add(bay);
    }
    List<Reach> reaches = new ArrayList<>();
    byStretch.forEach(
        (rows, run) ->
            reaches.add(new Reach(run, atRow(rows.get(0), origin), atRow(rows.get(1), origin))));
    return reaches;
  }

  private Height atRow(int row, Origin origin) {
    Grid.Row at = names.row(row);
    return new Height(at.left().elevation(), Optional.of(at.name()), Length.ZERO, origin);
  }

  private Optional<Given<Length>> clear(Said said) {
    return said.clause(ClauseWord.CLEAR, Clause.Valued.class)
        .flatMap(clause -> said.values(collector).given(clause.value(), "clearance"));
  }

  private Optional<Given<Quantity>> mass(Said said) {
    return said.clause(ClauseWord.MASS, Clause.Valued.class)
        .flatMap(
            clause ->
                said.values(collector)
                    .quantity(clause.value(), Kind.MASS_PER_AREA, "mass by area")
                    .map(mass -> Given.stated(mass, said.spot().at(clause.value().range()))));
  }
}
