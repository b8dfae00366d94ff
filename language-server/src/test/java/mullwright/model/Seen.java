package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import mullwright.quantity.Length;

/** A model read for a test, with short ways to look at it. */
record Seen(Walls files, Model model) {
  /** Reads a text that may use the invented catalog. */
  static Seen of(String text) {
    Walls files = Walls.withCatalog().with("w.wall", text);
    return new Seen(files, files.read("w.wall"));
  }

  /** Reads a wall with those lines in its grid. */
  static Seen grid(String... lines) {
    return wall("grid {\n" + String.join("\n", lines) + "\n}");
  }

  /** Reads a wall of the invented system with those blocks. */
  static Seen wall(String... blocks) {
    return of(
        "use \"captured.wall\"\nunits inches\n\nwall W {\nsystem captured-6\n"
            + String.join("\n", blocks)
            + "\n}\n");
  }

  /**
   * Reads a wall of four bays A to E, 5'-0" each, floors L1 to L3 at 0, 13'-0" and 26'-0", with a
   * sill 2" above L1, a row R1 3'-0" above each of L1 and L2, and a head 4" above L3.
   */
  static Seen frame(String... blocks) {
    String grid =
        """
        grid {
          lines A..E  spaced 4 @ 5'-0"
          floors L1..L3  spaced 2 @ 13'-0"  slab 10"
          row sill  at 2" above L1
          row R     at 3'-0" above L1, L2
          row head  at 4" above L3
        }
        """;
    return wall(grid + String.join("\n", blocks));
  }

  Wall wall() {
    return model.walls().get(model.walls().size() - 1);
  }

  Grid grid() {
    return wall().grid();
  }

  List<ModelProblem> problems() {
    return model.problems();
  }

  /** The only problem there is, which must be of that type. */
  <P extends ModelProblem> P problem(Class<P> type) {
    assertThat(model.problems()).hasSize(1);
    assertThat(model.problems().get(0)).isInstanceOf(type);
    return type.cast(model.problems().get(0));
  }

  /** Asserts that nothing is wrong. */
  Seen sound() {
    assertThat(model.problems()).isEmpty();
    return this;
  }

  /** The text an origin stands for. */
  String text(Origin origin) {
    return files.text(origin);
  }

  String text(ModelProblem problem) {
    return files.text(problem.origin());
  }

  /** {@code A 0, B 60} with inches. */
  String lines() {
    return grid().lines().stream()
        .map(line -> line.name() + " " + inches(line.x()))
        .collect(Collectors.joining(", "));
  }

  /** {@code sill 2, L2.R 192} with inches. */
  String rows() {
    return grid().rows().stream()
        .map(row -> row.name() + " " + inches(row.left().elevation()))
        .collect(Collectors.joining(", "));
  }

  /** {@code L1 0, L2 156} with inches. */
  String floors() {
    return grid().floors().stream()
        .map(floor -> floor.name() + " " + inches(floor.elevation().value()))
        .collect(Collectors.joining(", "));
  }

  /** {@code A jamb-6, B mullion-6}. */
  String verticals() {
    return wall().members().verticals().stream()
        .map(vertical -> line(vertical.line()) + " " + vertical.profile().value())
        .collect(Collectors.joining(", "));
  }

  /** {@code A L2 dead-load angle-6}, by line, then from below. */
  List<String> anchors() {
    return wall().anchors().stream()
        .map(
            anchor ->
                line(anchor.line())
                    + " "
                    + anchor.place().base().orElse(inches(anchor.place().elevation()))
                    + " "
                    + anchor.kind().spelling()
                    + anchor.part().map(part -> " " + part.value()).orElse(""))
        .toList();
  }

  /** The glass of a bay from below. */
  String glass(int bay) {
    return wall().lites().stream()
        .filter(lite -> lite.bay() == bay)
        .map(lite -> lite.glass().value())
        .collect(Collectors.joining(" "));
  }

  String line(int index) {
    return grid().lines().get(index).name();
  }

  String row(int index) {
    return grid().rows().get(index).name();
  }

  static String inches(Length length) {
    return length.inches().toString();
  }
}
