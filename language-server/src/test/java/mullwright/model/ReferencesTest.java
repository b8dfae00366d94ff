package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import mullwright.syntax.Remark;
import org.junit.jupiter.api.Test;

/** Names in the text and what they stand for. */
class ReferencesTest {
  private static String shown(Seen seen, Reference reference) {
    return (reference.definition() ? "def " : "use ")
        + reference.symbol().kind()
        + " "
        + reference.symbol().name()
        + " "
        + seen.text(reference.origin());
  }

  private static List<String> references(Seen seen) {
    return seen.model().references().stream()
        .filter(reference -> reference.origin().file().equals("w.wall"))
        .map(reference -> shown(seen, reference))
        .toList();
  }

  @Test
  void inTheOrderOfTheText() {
    Seen seen =
        Seen.of(
                """
            let h = 3"
            wall W {
              grid {
                row rail at h above L1, L2
                floors L1, L2 spaced 156"
              }
            }
            """)
            .sound();
    assertThat(references(seen))
        .containsExactly(
            "def LET h h",
            "def WALL W W",
            "def ROW rail rail",
            "use LET h h",
            "use FLOOR L1 L1",
            "use FLOOR L2 L2",
            "def FLOOR L1 L1",
            "def FLOOR L2 L2");
  }

  @Test
  void aDottedNameIsTwoNames() {
    Seen seen =
        Seen.of(
                """
            units inches
            wall W {
              grid {
                floors L1, L2 spaced 156
                row rail at 36 above L1, L2
                row mid  at 6 above L2.rail
              }
            }
            """)
            .sound();
    assertThat(references(seen))
        .endsWith("def ROW mid mid", "use FLOOR L2 L2", "use ROW rail rail");
  }

  @Test
  void aRowOfManyStatementsIsOneSymbol() {
    Seen seen =
        Seen.grid(
                "floors L1..L3 spaced 2 @ 156",
                "row rail at 36 above L1..L3",
                "row rail at 40 above L2")
            .sound();
    List<Reference> rails =
        seen.model().references().stream()
            .filter(reference -> reference.symbol().kind() == Symbol.Kind.ROW)
            .toList();
    assertThat(rails).hasSize(2).allMatch(Reference::definition);
    assertThat(rails.get(0).symbol()).isEqualTo(rails.get(1).symbol());
  }

  @Test
  void partsAreFoundInTheFileThatHoldsThem() {
    Seen seen = Seen.frame("members {\nvertical all as jamb-6\nhorizontal all\n}").sound();
    Reference use =
        seen.model().references().stream()
            .filter(reference -> reference.symbol().name().equals("jamb-6"))
            .filter(reference -> reference.origin().file().equals("w.wall"))
            .findFirst()
            .orElseThrow();
    assertThat(use.symbol().definition().file()).isEqualTo("captured.wall");
    assertThat(seen.text(use.symbol().definition())).isEqualTo("jamb-6");
  }

  @Test
  void quotedNamesIncludeTheirQuotes() {
    Seen seen =
        Seen.grid("floor \"ground floor\" at 0", "row sill at 2 above \"ground floor\"").sound();
    assertThat(references(seen)).contains("use FLOOR ground floor \"ground floor\"");
  }

  @Test
  void everyNameOnceAndAtItsPlace() {
    Walls files = Walls.withCatalog().with("w.wall", Walls.resource("tower.wall"));
    Seen seen = new Seen(files, files.read("w.wall"));
    assertThat(seen.model().references()).doesNotHaveDuplicates();
    assertThat(seen.model().references())
        .allSatisfy(
            reference ->
                assertThat(seen.text(reference.origin())).isEqualTo(reference.symbol().name()));
  }

  @Test
  void remarksWithTheirStatements() {
    Seen seen =
        Seen.grid("floor L1 at 0 verify \"survey\"", "row sill at 2 above L1 note \"see 5/A-601\"")
            .sound();
    assertThat(
            seen.model().remarks().stream()
                .map(
                    remark ->
                        remark.kind()
                            + " "
                            + remark.text()
                            + ": "
                            + seen.text(remark.statement()).split(" ")[0])
                .collect(Collectors.joining(", ")))
        .isEqualTo("VERIFY survey: floor, NOTE see 5/A-601: row");
    assertThat(Remark.Kind.values()).hasSize(3);
  }
}
