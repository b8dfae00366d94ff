package mullwright.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.syntax.BlockKind;
import mullwright.syntax.StatementKind;
import mullwright.syntax.SyntaxProblem;

/**
 * A first word that no statement of its block begins with, but that says what is meant: it begins a
 * statement of another block, names a kind of opening, or is the trade's other word for something
 * the language has one word for.
 */
final class OtherPlace {
  /** Names that rows often have. */
  private static final Set<String> ROWS = Set.of("sill", "head", "rail", "transom");

  /** What drafters also say, and the first word of the language for it. */
  private static final Map<String, String> ALSO_SAID =
      Map.ofEntries(
          Map.entry("axis", "line"),
          Map.entry("axes", "lines"),
          Map.entry("column", "line"),
          Map.entry("columns", "lines"),
          Map.entry("gridline", "line"),
          Map.entry("gridlines", "lines"),
          Map.entry("level", "floor"),
          Map.entry("levels", "floors"),
          Map.entry("storey", "floor"),
          Map.entry("storeys", "floors"),
          Map.entry("story", "floor"),
          Map.entry("stories", "floors"),
          Map.entry("mullion", "vertical"),
          Map.entry("mullions", "vertical"),
          Map.entry("jamb", "vertical"),
          Map.entry("jambs", "vertical"),
          Map.entry("post", "vertical"),
          Map.entry("posts", "vertical"),
          Map.entry("transom", "horizontal"),
          Map.entry("transoms", "horizontal"),
          Map.entry("rail", "horizontal"),
          Map.entry("rails", "horizontal"),
          Map.entry("rows", "row"),
          Map.entry("verticals", "vertical"),
          Map.entry("horizontals", "horizontal"),
          Map.entry("steel", "reinforce"),
          Map.entry("glass", "vision"),
          Map.entry("glazing", "vision"),
          Map.entry("lite", "vision"),
          Map.entry("pane", "vision"),
          Map.entry("panel", "spandrel"),
          Map.entry("anchor", "dead-load"),
          Map.entry("louver", "opening louvre"),
          Map.entry("doors", "opening door"),
          Map.entry("window", "opening vent"));

  private OtherPlace() {}

  /** What to say of it; empty if the word tells nothing. */
  static Optional<SyntaxWords> of(SyntaxProblem.UnknownKeyword it) {
    String word = it.word().text();
    if (OtherWords.OPENINGS.contains(word)) {
      return Optional.of(said(it, "opening " + word));
    }
    if (ROWS.contains(word) && it.block() == BlockKind.GRID) {
      return Optional.of(said(it, "row " + word));
    }
    Optional<String> also = Optional.ofNullable(ALSO_SAID.get(word.toLowerCase(Locale.ROOT)));
    if (also.filter(known -> it.known().contains(first(known))).isPresent()) {
      return also.map(known -> said(it, known));
    }
    Optional<String> place = place(word, it.block());
    if (place.isPresent()) {
      return place.map(
          where ->
              new SyntaxWords(
                  Words.quoted(word) + " cannot stand here.",
                  "It stands " + where + ": put it there.",
                  List.of()));
    }
    return also.map(known -> said(it, known));
  }

  private static SyntaxWords said(SyntaxProblem.UnknownKeyword it, String known) {
    String what = "No statement here begins with " + Words.quoted(it.word().text()) + ".";
    return it.known().contains(first(known))
        ? new SyntaxWords(what, "Write " + known + ".", List.of(known))
        : new SyntaxWords(
            what,
            "What may be meant is "
                + Words.quoted(known)
                + place(first(known), it.block()).map(where -> ", which stands " + where).orElse("")
                + ".",
            List.of());
  }

  private static String first(String words) {
    return words.split(" ")[0];
  }

  /** Where a line with that first word stands, if that is another block. */
  private static Optional<String> place(String word, BlockKind here) {
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Optional<StatementKind> statement =
        Arrays.stream(StatementKind.values())
            .filter(kind -> kind.spelling().equals(word) && !kind.standsIn().contains(here))
            .findFirst();
    if (statement.isPresent()) {
      return statement.map(
          kind -> among(kind.standsIn().stream().sorted().map(OtherPlace::name).toList()));
    }
    return property(word, here).or(() -> part(word, here));
  }

  private static Optional<String> property(String word, BlockKind here) {
    List<String> blocks =
        List.of(
                Map.entry(BlockKind.CRITERIA, PartSchema.criteria()),
                Map.entry(BlockKind.FABRICATION, PartSchema.fabrication()),
                Map.entry(BlockKind.PROJECT, PartSchema.project()),
                Map.entry(BlockKind.WALL, PartSchema.wall()))
            .stream()
            .filter(block -> block.getKey() != here && block.getValue().find(word).isPresent())
            .map(block -> name(block.getKey()))
            .toList();
    return blocks.isEmpty() ? Optional.empty() : Optional.of(among(blocks));
  }

  private static Optional<String> part(String word, BlockKind here) {
    return here == BlockKind.FILE || here == BlockKind.PROJECT
        ? PartKind.of(word).map(kind -> among(List.of(name(BlockKind.CATALOG))))
        : Optional.empty();
  }

  private static String name(BlockKind block) {
    return block == BlockKind.FILE ? "" : block.name().toLowerCase(Locale.ROOT);
  }

  private static String among(List<String> blocks) {
    List<String> named =
        blocks.stream().filter(name -> !name.isEmpty()).map(Words::quoted).toList();
    return blocks.size() > named.size()
        ? "outside of all blocks" + (named.isEmpty() ? "" : ", or in " + Words.either(named))
        : "in " + Words.either(named);
  }
}
