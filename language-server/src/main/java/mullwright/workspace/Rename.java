package mullwright.workspace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.model.Origin;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;

/**
 * Gives a thing another name wherever it is named.
 *
 * <p>Nothing is guessed: every place must spell the name as its definition does, and the texts with
 * the new name are read before they are offered. A new name that makes a problem, or takes one
 * away, would mean something else and is refused.
 */
public final class Rename {
  private final Snapshot snapshot;
  private final List<Origin> places;
  private final String oldName;
  private final Optional<String> refusal;

  private Rename(Snapshot snapshot, List<Origin> places, String oldName, Optional<String> refusal) {
    this.snapshot = snapshot;
    this.places = places;
    this.oldName = oldName;
    this.refusal = refusal;
  }

  /**
   * What a rename comes to.
   *
   * @param places where the text goes, empty if refused
   * @param text the new name as it must be written, in quotes if it needs them
   * @param refusal why it is refused, a sentence
   */
  public record Outcome(List<Origin> places, String text, Optional<String> refusal) {}

  /** A rename of that symbol, not yet made. */
  public static Rename of(Symbol symbol, Snapshot snapshot, Cancel cancel) {
    List<Origin> places = new ArrayList<>();
    String definition = text(snapshot, symbol.definition()).orElse("");
    String name = unquoted(definition);
    boolean same = name.equals(symbol.name()) || symbol.name().endsWith("." + name);
    for (Reference use : Uses.of(Set.of(symbol), snapshot, cancel)) {
      same &= unquoted(text(snapshot, use.origin()).orElse("")).equals(name);
      if (!places.contains(use.origin())) {
        places.add(use.origin());
      }
    }
    Optional<String> refusal =
        !same || name.isEmpty()
            ? Optional.of(
                symbol.name()
                    + " is made by the pattern "
                    + definition
                    + " and cannot be renamed by itself. Change the pattern.")
            : endOfRange(snapshot, symbol)
                ? Optional.of(
                    name
                        + " is an end of a range, from which the names between are made. Write the"
                        + " names one by one to rename one of them.")
                : Optional.empty();
    return new Rename(snapshot, List.copyOf(places), name, refusal);
  }

  /** True if the name is defined as the first or the last of a range: {@code A..G}. */
  private static boolean endOfRange(Snapshot snapshot, Symbol symbol) {
    Optional<FilePlace> at = snapshot.place(symbol.definition());
    Optional<ParsedFile> file = at.flatMap(place -> snapshot.file(place.path()));
    return file.isPresent()
        && (file.get().text().substring(0, at.get().start()).endsWith("..")
            || file.get().text().startsWith("..", at.get().end()));
  }

  /** The name as it is, without quotes. */
  public String oldName() {
    return oldName;
  }

  /** Why it cannot be renamed, whatever the new name. */
  public Optional<String> refusal() {
    return refusal;
  }

  /** A place without the quotes its name may stand in. */
  public Origin bare(Origin place) {
    TextRange range = place.range();
    return text(snapshot, place).filter(text -> !text.equals(unquoted(text))).isEmpty()
        ? place
        : new Origin(
            place.file(), place.segment(), new TextRange(range.start() + 1, range.end() - 1));
  }

  /**
   * The rename to that name; refused if any text would then read otherwise.
   *
   * @param asked the name; blanks round it are none of it
   */
  public Outcome to(String asked, Cancel cancel) {
    String newName = asked.strip();
    if (newName.isEmpty() || newName.chars().anyMatch(c -> c == '"' || Character.isISOControl(c))) {
      return refused("A name is one line without quotes, and not empty.");
    }
    for (String written : List.of(newName, '"' + newName + '"')) {
      cancel.check();
      if (!holdsComment(written) && readsTheSame(written)) {
        return new Outcome(places, written, Optional.empty());
      }
    }
    return refused(
        taken(newName)
            .map(at -> newName + " is taken: " + at + ". Choose a name that nothing there has.")
            .orElse(
                "With the name "
                    + newName
                    + " the walls would read otherwise. Choose a name that is no word of the"
                    + " language and that nothing has."));
  }

  /** Where a thing has that name already, among the files the rename touches. */
  private Optional<String> taken(String newName) {
    Set<String> files = new TreeSet<>();
    places.forEach(place -> files.add(place.file()));
    for (String path : files) {
      for (Reference reference :
          snapshot.reading(path).map(r -> r.model().references()).orElse(List.of())) {
        Symbol symbol = reference.symbol();
        if (reference.definition() && symbol.name().equals(newName)) {
          return snapshot.place(reference.origin()).map(at -> where(symbol, at));
        }
      }
    }
    return Optional.empty();
  }

  private String where(Symbol symbol, FilePlace at) {
    int line = snapshot.file(at.path()).orElseThrow().lines().line(at.start()) + 1;
    String kind = symbol.kind().name().toLowerCase(Locale.ROOT);
    return "a " + kind + " has it (" + at.path() + ", line " + line + ")";
  }

  private static Outcome refused(String why) {
    return new Outcome(List.of(), "", Optional.of(why));
  }

  /** True of {@code a//b}: no name but a, as nothing may hang on where the line ends. */
  private static boolean holdsComment(String written) {
    return ParsedFile.parse(written).segments().stream()
        .anyMatch(segment -> !segment.comments().isEmpty());
  }

  private boolean readsTheSame(String written) {
    Snapshot after = with(written);
    for (String path : after.walls()) {
      Optional<ParsedFile> was = snapshot.file(path);
      boolean touched =
          !was.equals(after.file(path)) || places.stream().anyMatch(p -> uses(path, p.file()));
      if (touched && !shape(snapshot, path).equals(shape(after, path))) {
        return false;
      }
    }
    return true;
  }

  private boolean uses(String path, String file) {
    return snapshot.reading(path).filter(r -> r.model().uses().contains(file)).isPresent();
  }

  /** How many problems, references and definitions a file has: what a clean rename leaves alone. */
  private static List<Integer> shape(Snapshot snapshot, String path) {
    return snapshot
        .reading(path)
        .map(
            reading -> {
              int syntax = snapshot.file(path).map(file -> file.problems().size()).orElse(0);
              Set<Symbol> symbols = new HashSet<>();
              reading.model().references().forEach(reference -> symbols.add(reference.symbol()));
              return List.of(
                  syntax,
                  reading.model().problems().size(),
                  reading.model().references().size(),
                  symbols.size());
            })
        .orElse(List.of());
  }

  private Snapshot with(String written) {
    Map<String, List<FilePlace>> byFile = new HashMap<>();
    for (Origin place : places) {
      snapshot
          .place(place)
          .ifPresent(at -> byFile.computeIfAbsent(at.path(), p -> new ArrayList<>()).add(at));
    }
    Map<String, ParsedFile> buffers = new HashMap<>(snapshot.buffers());
    byFile.forEach(
        (path, edits) -> {
          edits.sort(Comparator.comparingInt(FilePlace::start).reversed());
          ParsedFile file = snapshot.file(path).orElseThrow();
          StringBuilder text = new StringBuilder(file.text());
          edits.forEach(edit -> text.replace(edit.start(), edit.end(), written));
          buffers.put(path, ParsedFile.parse(text.toString()));
        });
    return snapshot.with(buffers);
  }

  private static Optional<String> text(Snapshot snapshot, Origin origin) {
    return snapshot
        .place(origin)
        .flatMap(
            at ->
                snapshot.file(at.path()).map(file -> file.text().substring(at.start(), at.end())));
  }

  private static String unquoted(String text) {
    boolean quoted = text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"");
    return quoted ? text.substring(1, text.length() - 1) : text;
  }
}
