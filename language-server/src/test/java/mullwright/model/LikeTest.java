package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Walls that are like another, mirrored or not. */
class LikeTest {
  private static final String EAST =
      """
      use "captured.wall"
      units inches
      wall East {
        system captured-6
        let b = 60
        grid {
          lines A..D spaced b, 48, 36
          floors L1, L2 spaced 156
          row sill at 2 above L1
          row R1   at 20 above L1 to 40 above L1 only A..B
          row head at 4 above L2
          corner B 120 deg
        }
        members {
          vertical all every 2 as mullion
          vertical D as jamb
          vertical B as mullion
          horizontal all
        }
        anchors { dead-load B, C at L2 part angle-6 offset 1 right }
        lites { vision V1 bays A..C }
        installation { stick A..D start left }
      }
      """;

  private static Seen west(String head, String body) {
    return Seen.of(EAST + "wall West like East " + head + " {\n" + body + "\n}\n");
  }

  @Test
  void allIsTaken() {
    Seen seen = west("", "").sound();
    Wall east = seen.model().walls().get(0);
    assertThat(seen.wall().name()).isEqualTo("West");
    assertThat(seen.wall().grid().lines()).isEqualTo(east.grid().lines());
    assertThat(seen.wall().grid().rows()).isEqualTo(east.grid().rows());
    assertThat(seen.wall().members()).isEqualTo(east.members());
    assertThat(seen.wall().anchors()).isEqualTo(east.anchors());
    assertThat(seen.wall().lites()).isEqualTo(east.lites());
    assertThat(seen.wall().installation()).isEqualTo(east.installation());
    assertThat(seen.wall().system()).isEqualTo(east.system());
  }

  @Test
  void aFinishOfAllSidesStandsInPlaceOfThoseOfSides() {
    String sides = "wall East {\n finish bronze outside, clear inside\n";
    Seen all =
        Seen.of(EAST.replace("wall East {", sides) + "wall West like East {\n finish grey\n}\n");
    assertThat(all.wall().finish()).containsOnlyKeys("");
    Seen one =
        Seen.of(
            EAST.replace("wall East {", sides)
                + "wall West like East {\n finish grey outside\n}\n");
    assertThat(one.wall().finish()).containsOnlyKeys("outside", "inside");
    assertThat(one.wall().finish().get("inside").value()).isEqualTo("clear");
  }

  @Test
  void mirroredLinesStandInReverse() {
    Seen seen = west("mirrored", "").sound();
    // 60, 48, 36 from the left becomes 36, 48, 60, and each line keeps its name
    assertThat(seen.lines()).isEqualTo("D 0, C 36, B 84, A 144");
    assertThat(seen.grid().corners())
        .extracting(corner -> seen.line(corner.line()))
        .containsExactly("B");
    // A, C by every second from the first named, as in the wall it is like; then B and D
    assertThat(seen.verticals()).isEqualTo("D jamb-6, C mullion-6, B mullion-6, A mullion-6");
  }

  @Test
  void mirroredSlopesAndSidesTurn() {
    Seen seen = west("mirrored", "").sound();
    Grid.Row sloped =
        seen.grid().rows().stream().filter(Grid.Row::slopes).findFirst().orElseThrow();
    // bay A..B is the last one now, and rises to the left
    assertThat(sloped.bays()).containsExactly(2);
    assertThat(sloped.left().elevation()).isEqualTo(Length.ofInches(40));
    assertThat(sloped.right().elevation()).isEqualTo(Length.ofInches(20));
    assertThat(seen.wall().anchors())
        .extracting(
            anchor ->
                seen.line(anchor.line()) + " " + Seen.inches(anchor.offset().orElseThrow().value()))
        .containsExactly("C -1", "B -1");
    assertThat(seen.wall().installation().stretches().get(0).fromRight()).isTrue();
    assertThat(seen.glass(0)).isEmpty();
    assertThat(seen.glass(1)).isNotEmpty();
    assertThat(seen.glass(2)).isNotEmpty();
  }

  @Test
  void whatDiffersGoesOver() {
    Seen seen =
        west(
                "",
                """
            let b = 72
            grid { row head at 10 above L2 }
            members { vertical A as jamb }
            anchors { wind-load C at L2 part slot-6 }
            """)
            .sound();
    assertThat(seen.lines()).isEqualTo("A 0, B 72, C 120, D 156");
    assertThat(seen.rows()).endsWith("head 166");
    assertThat(seen.verticals()).startsWith("A jamb-6, B mullion-6");
    assertThat(seen.anchors()).containsExactly("B L2 dead-load angle-6", "C L2 wind-load slot-6");
    // the wall it is like stays what it was
    assertThat(
            new Seen(seen.files(), seen.model()).model().walls().get(0).grid().lines().get(1).x())
        .isEqualTo(Length.ofInches(60));
  }

  @Test
  void ownStatementsInherit() {
    Seen seen = west("", "anchors { dead-load B at L2 offset 2 left }").sound();
    AnchorUse own = seen.wall().anchors().get(0);
    assertThat(own.part().orElseThrow().value()).isEqualTo("angle-6");
    assertThat(own.offset().orElseThrow().value()).isEqualTo(Length.ofInches(-2));
  }

  @Test
  void aWallMayBeLikeOneThatIsLikeAnother() {
    Seen seen =
        Seen.of(EAST + "wall West like East mirrored { }\n" + "wall North like West mirrored { }\n")
            .sound();
    Wall east = seen.model().walls().get(0);
    // mirrored twice is itself
    assertThat(seen.wall().grid().lines()).isEqualTo(east.grid().lines());
    assertThat(seen.wall().grid().rows()).isEqualTo(east.grid().rows());
    assertThat(seen.wall().members()).isEqualTo(east.members());
    assertThat(seen.wall().anchors()).isEqualTo(east.anchors());
    assertThat(seen.wall().installation()).isEqualTo(east.installation());
  }

  @Test
  void aWallMayBeLikeOneOfAUsedFile() {
    Walls files =
        Walls.withCatalog()
            .with("east.wall", EAST)
            .with(
                "w.wall",
                "use \"east.wall\"\nunits millimetres\nwall West like East {\n"
                    + "grid { row mid at 2000 above L1 }\n}");
    Seen seen = new Seen(files, files.read("w.wall")).sound();
    // East's bare numbers stay inches, West's are millimetres
    assertThat(seen.lines()).isEqualTo("A 0, B 60, C 108, D 144");
    assertThat(seen.grid().rows())
        .anyMatch(row -> row.left().elevation().equals(Length.ofMillimetres(2000)));
    assertThat(seen.model().walls()).hasSize(1);
  }

  @Test
  void namesKeepTheirOneDefinition() {
    Seen seen = west("", "members { vertical A as jamb }").sound();
    List<Reference> definitions =
        seen.model().references().stream()
            .filter(Reference::definition)
            .filter(reference -> reference.symbol().kind() == Symbol.Kind.LINE)
            .toList();
    assertThat(definitions)
        .extracting(reference -> reference.symbol().scope())
        .containsOnly("East");
  }

  @Test
  void likeNothing() {
    assertThat(Seen.of("wall W like V { }").problem(ModelProblem.UnknownName.class).what())
        .isEqualTo("wall");
    assertThat(Seen.of("wall W mirrored { }").problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("the wall W is mirrored from nothing");
  }

  @Test
  void likeInACircle() {
    Seen seen = Seen.of("wall V like W { }\nwall W like V { }");
    assertThat(seen.problems())
        .hasSize(2)
        .allMatch(
            problem ->
                problem instanceof ModelProblem.BadValue bad
                    && bad.reason() == ModelProblem.BadValue.Reason.CIRCULAR);
    assertThat(Seen.of("wall W like W { }").problem(ModelProblem.BadValue.class).text())
        .isEqualTo("W = W");
  }

  @Test
  void anInheritedStatementIsNeverShadowed() {
    west("", "anchors { dead-load B, C at L2 part slot-6 offset 2 right }").sound();
  }
}
