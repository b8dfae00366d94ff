package mullwright.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.syntax.BlockKind;
import mullwright.syntax.StatementKind;

/** The blocks where lines of the language stand, by their first word. */
final class OtherPlace {
  private OtherPlace() {}

  /**
   * Where a line with that first word stands, if that is another block: {@code in "grid"}, or
   * {@code outside of all blocks}.
   */
  static Optional<String> of(String word, BlockKind here) {
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
