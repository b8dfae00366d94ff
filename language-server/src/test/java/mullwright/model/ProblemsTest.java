package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is wrong with names, counts, orders and places: one problem for one mistake. */
class ProblemsTest {
  private static final String MEMBERS = "members {\nvertical all\nhorizontal all\n}";

  @Test
  void anUnknownLineOffersTheNearest() {
    Seen seen = Seen.frame("members {\nvertical A..e\nhorizontal all\n}");
    ModelProblem.UnknownName unknown =
        seen.problems().stream()
            .filter(ModelProblem.UnknownName.class::isInstance)
            .map(ModelProblem.UnknownName.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(unknown.what()).isEqualTo("line");
    assertThat(unknown.name()).isEqualTo("e");
    // case matters, and the mend is offered
    assertThat(unknown.candidates()).startsWith("E").contains("A", "B", "C", "D");
    assertThat(seen.text(unknown)).isEqualTo("e");
  }

  @Test
  void anUnknownFloorInAPlace() {
    Seen seen = Seen.frame(MEMBERS, "anchors { dead-load all at L4 part angle-6 }");
    ModelProblem.UnknownName unknown = seen.problem(ModelProblem.UnknownName.class);
    assertThat(unknown.what()).isEqualTo("floor or row");
    assertThat(unknown.candidates()).startsWith("L1", "L2", "L3");
  }

  @Test
  void anUnknownPart() {
    Seen seen = Seen.frame(MEMBERS, "anchors { dead-load all at L2 part angel-6 }");
    ModelProblem.UnknownName unknown = seen.problem(ModelProblem.UnknownName.class);
    assertThat(unknown.what()).isEqualTo("anchor");
    assertThat(unknown.candidates()).startsWith("angle-6");
    assertThat(seen.text(unknown)).isEqualTo("angel-6");
    // the anchor stands all the same
    assertThat(seen.wall().anchors()).hasSize(5);
  }

  @Test
  void anUnknownProfileOffersRolesToo() {
    Seen seen = Seen.frame("members {\nvertical all as mulion\nhorizontal all\n}");
    assertThat(seen.problem(ModelProblem.UnknownName.class).candidates())
        .startsWith("mullion")
        .contains("jamb-6");
  }

  @Test
  void anUnknownSystem() {
    Seen seen = Seen.of("use \"captured.wall\"\nwall W {\nsystem captured-7\n" + MEMBERS + "\n}");
    assertThat(seen.problem(ModelProblem.UnknownName.class).candidates())
        .containsExactly("captured-6");
    assertThat(seen.wall().system()).isEmpty();
  }

  @Test
  void tooFewSpaces() {
    Seen seen = Seen.grid("lines A..G spaced 5 @ 5'-0\"");
    ModelProblem.CountMismatch mismatch = seen.problem(ModelProblem.CountMismatch.class);
    assertThat(mismatch.names()).isEqualTo(6);
    assertThat(mismatch.given()).isEqualTo(5);
    assertThat(mismatch.what()).isEqualTo("spaces between 7 lines");
    assertThat(mismatch.hint()).isEqualTo("write spaced 6 @ 5'-0\"");
    // the last space goes on, so that the names work elsewhere
    assertThat(seen.grid().lines()).hasSize(7);
  }

  @Test
  void tooManySpaces() {
    Seen seen = Seen.grid("floors L1..L3 spaced 156, 156, 160");
    ModelProblem.CountMismatch mismatch = seen.problem(ModelProblem.CountMismatch.class);
    assertThat(mismatch.names() + " " + mismatch.given()).isEqualTo("2 3");
    assertThat(mismatch.hint()).isEqualTo("3 names have 2 spaces between them");
    assertThat(seen.floors()).isEqualTo("L1 0, L2 156, L3 312");
  }

  @Test
  void positionsThatDoNotFit() {
    Seen seen = Seen.grid("lines A, B, C at 0, 60");
    ModelProblem.CountMismatch mismatch = seen.problem(ModelProblem.CountMismatch.class);
    assertThat(mismatch.names() + " " + mismatch.given()).isEqualTo("3 2");
  }

  @Test
  void aLineTwice() {
    Seen seen = Seen.grid("lines A..C spaced 2 @ 60", "line B at 30 right of A");
    ModelProblem.Duplicate duplicate = seen.problem(ModelProblem.Duplicate.class);
    assertThat(duplicate.what() + " " + duplicate.name()).isEqualTo("line B");
    assertThat(seen.text(duplicate.first())).isEqualTo("A..C");
    assertThat(seen.text(duplicate)).isEqualTo("B");
  }

  @Test
  void oneNameForFloorsRowsAndLets() {
    Seen seen =
        Seen.wall("let x = 3\ngrid {\nfloor L1 at 0\nrow L1 at 36 above L1\nrow x at 40\n}");
    assertThat(seen.problems())
        .hasSize(2)
        .allMatch(
            problem ->
                problem instanceof ModelProblem.Duplicate duplicate
                    && duplicate.what().equals("name"));
  }

  @Test
  void linesHaveNamesOfTheirOwn() {
    Seen.grid("lines L1, L2 at 0, 60", "floor L1 at 0", "row L2 at 3 above L1").sound();
  }

  @Test
  void twoFloorsAtOneHeight() {
    Seen seen = Seen.grid("floor L1 at 0", "floor L2 at 0");
    ModelProblem.OutOfOrder order = seen.problem(ModelProblem.OutOfOrder.class);
    assertThat(order.what()).isEqualTo("floor");
    assertThat(order.previous() + " " + order.name()).isEqualTo("L1 L2");
  }

  @Test
  void twoRowsOfABayAtOneHeight() {
    Seen seen = Seen.grid("lines A..C spaced 2 @ 60", "row R1 at 36", "row R2 at 36 only B..C");
    assertThat(seen.problem(ModelProblem.OutOfOrder.class).name()).isEqualTo("R2");
  }

  @Test
  void rowsOfDifferentBaysMayBeAtOneHeight() {
    Seen.grid("lines A..C spaced 2 @ 60", "row R1 at 36 only A..B", "row R2 at 36 only B..C")
        .sound();
  }

  @Test
  void rowsThatCross() {
    Seen seen = Seen.grid("lines A..C spaced 2 @ 60", "row R1 at 36 to 60", "row R2 at 40 to 50");
    seen.problem(ModelProblem.OutOfOrder.class);
  }

  @Test
  void twoLinesAtOnePlace() {
    Seen seen = Seen.grid("lines A..C spaced 2 @ 60", "line X at 60");
    assertThat(seen.problem(ModelProblem.OutOfOrder.class).what()).isEqualTo("line");
  }

  @Test
  void aRangeOfRowsGoesUp() {
    Seen seen = Seen.frame(MEMBERS, "lites { vision V1 rows head..sill }");
    ModelProblem.OutOfOrder order = seen.problem(ModelProblem.OutOfOrder.class);
    assertThat(seen.text(order)).isEqualTo("sill");
    // read as meant
    assertThat(seen.glass(0)).isEqualTo("V1 V1 V1");
  }

  @Test
  void aReachGoesUp() {
    Seen seen =
        Seen.frame("members {\nvertical all\nhorizontal all\n" + "vertical C from L2 to L1\n}");
    assertThat(seen.problem(ModelProblem.OutOfOrder.class).what()).isEqualTo("place");
  }

  @Test
  void linesMayBeNamedInEitherDirection() {
    Seen seen = Seen.frame(MEMBERS, "lites { vision V1 bays D..B }").sound();
    assertThat(seen.glass(0)).isEmpty();
    assertThat(seen.glass(1)).isEqualTo("V1 V1 V1");
  }

  @Test
  void aSingleLineIsNoBay() {
    Seen seen = Seen.frame(MEMBERS, "lites { vision V1 bays C }");
    ModelProblem.OutOfPlace misplaced = seen.problem(ModelProblem.OutOfPlace.class);
    assertThat(misplaced.what()).isEqualTo("\"C\" names nothing");
    assertThat(misplaced.why()).isEqualTo("a bay lies between two lines, as A..B");
  }

  @Test
  void aSingleRowIsNoSpace() {
    Seen seen = Seen.frame(MEMBERS, "lites { vision V1 rows sill }");
    assertThat(seen.problem(ModelProblem.OutOfPlace.class).why())
        .isEqualTo("a space lies between two rows, as R1..R2");
  }

  @Test
  void aLineNamedOutrightMustPass() {
    String grid =
        """
        grid {
          lines A..C spaced 2 @ 60
          floors L1..L3 spaced 2 @ 156
          row sill at 2 above L1
          row mid  at 3 above L2
          row head at 4 above L3 only A..B
        }
        """;
    // C stands beside the lower bay only: it ends at mid, and L3 is none of its floors
    Seen all = Seen.wall(grid, MEMBERS, "anchors { dead-load all at L3 part angle-6 }").sound();
    assertThat(all.anchors()).containsExactly("A L3 dead-load angle-6", "B L3 dead-load angle-6");
    Seen outright = Seen.wall(grid, MEMBERS, "anchors { dead-load B, C at L3 part angle-6 }");
    ModelProblem.OutOfPlace misplaced = outright.problem(ModelProblem.OutOfPlace.class);
    assertThat(misplaced.what()).isEqualTo("line C does not pass: at L3");
    assertThat(outright.anchors()).containsExactly("B L3 dead-load angle-6");
  }

  @Test
  void nobodyPassesTheDatumsDepths() {
    Seen seen = Seen.frame(MEMBERS, "anchors { dead-load all at -20'-0\" part angle-6 }");
    assertThat(seen.problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("no vertical passes there: at -20'-0\"");
  }

  @Test
  void aVerticalStandsOnTheFloorItsSillIsMeasuredFrom() {
    // the sill is 2" above L1, yet L1 holds the vertical's foot
    Seen seen = Seen.frame(MEMBERS, "anchors { dead-load all at L1 part angle-6 }").sound();
    assertThat(seen.anchors()).hasSize(5);
  }

  @Test
  void aSpliceInsideAnOpeningIsNone() {
    Seen seen =
        Seen.wall(
            """
            grid {
              lines A..C spaced 2 @ 60
              floors L1..L2 spaced 156
              row sill at 2 above L1
              row door-head at 84 above L1
              row head at 4 above L2
              opening door D bays A..C from L1 to door-head
            }
            members {
              vertical all
              horizontal all
              splice B at 24 above L1
            }
            """);
    // the door takes the vertical between its two bays
    assertThat(seen.problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("line B does not pass: at 24 above L1");
  }

  @Test
  void aPlaceThatStandsForManyWhereOneIsNeeded() {
    Seen seen = Seen.frame("members {\nvertical all\nhorizontal all\nvertical C from R to head\n}");
    assertThat(seen.problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("\"R\" stands for 2 places");
  }

  @Test
  void linesWithoutVerticals() {
    Seen seen = Seen.frame("members {\nvertical A..C\nhorizontal all\n}");
    ModelProblem.Missing missing = seen.problem(ModelProblem.Missing.class);
    assertThat(missing.where()).isEqualTo("members, for lines D, E,");
    assertThat(missing.offer()).contains("vertical D, E");
    assertThat(seen.text(missing)).isEqualTo("members");
  }

  @Test
  void rowsWithoutHorizontals() {
    Seen seen = Seen.frame("members {\nvertical all\nhorizontal sill, head\n}");
    assertThat(seen.problem(ModelProblem.Missing.class).where())
        .isEqualTo("members, for rows L1.R, L2.R,");
  }

  @Test
  void aWallWithoutMembersIsASketch() {
    Seen.frame().sound();
  }

  @Test
  void aWallWithMembersNeedsASystem() {
    Seen seen =
        Seen.of(
            "units inches\nwall W {\ngrid { lines A..B spaced 60 }\n"
                + "members { vertical all }\n}");
    assertThat(seen.problem(ModelProblem.Missing.class).what()).isEqualTo("its system");
  }

  @Test
  void theRoleASystemLacks() {
    Seen seen =
        Seen.of(
            """
            units inches
            catalog {
              system S { mullion m }
              profile m {
                face 2
                depth 6
              }
            }
            wall W {
              system S
              grid { lines A..C spaced 2 @ 60 }
              members { vertical all }
            }
            """);
    assertThat(seen.problem(ModelProblem.Missing.class).what()).isEqualTo("its jamb");
    assertThat(seen.wall().members().verticals()).hasSize(3);
  }

  @Test
  void whatAStatementLacks() {
    assertThat(Seen.grid("floor L1").problem(ModelProblem.Missing.class).what())
        .isEqualTo("its elevation");
    assertThat(Seen.grid("row R1").problem(ModelProblem.Missing.class).what())
        .isEqualTo("its height");
    assertThat(Seen.grid("lines A..G").problem(ModelProblem.Missing.class).offer())
        .contains("spaced 6 @ 5'-0\"");
    assertThat(
            Seen.frame(MEMBERS, "anchors { dead-load all part angle-6 }")
                .problem(ModelProblem.Missing.class)
                .what())
        .isEqualTo("where");
  }

  @Test
  void edgesAreForTheEndsOnly() {
    assertThat(
            Seen.grid("lines A..C spaced 2 @ 60", "line X at 30 edge")
                .problem(ModelProblem.OutOfPlace.class)
                .why())
        .isEqualTo("only the first and the last line have an outer edge");
    assertThat(Seen.grid("row R1 at 30 edge").problem(ModelProblem.OutOfPlace.class).why())
        .isEqualTo("only sill and head have an outer edge");
  }

  @Test
  void cornersAndJointsHaveTheirPlaces() {
    Seen end = Seen.grid("lines A..C spaced 2 @ 60", "corner A 90 deg");
    assertThat(end.problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("the wall cannot turn at its end line A");
    Seen apart = Seen.grid("lines A..C spaced 2 @ 60", "joint A..C");
    assertThat(apart.problem(ModelProblem.OutOfPlace.class).what())
        .isEqualTo("\"A..C\" is no joint");
    Seen flat = Seen.grid("lines A..C spaced 2 @ 60", "corner B 360 deg");
    assertThat(flat.problem(ModelProblem.BadValue.class).reason())
        .isEqualTo(ModelProblem.BadValue.Reason.OUT_OF_RANGE);
  }

  @Test
  void openingsAreOfFourKinds() {
    Seen seen =
        Seen.grid(
            "lines A..C spaced 2 @ 60", "row R1 at 30", "opening hatch H bays A..B from 0 to R1");
    assertThat(seen.problem(ModelProblem.UnknownName.class).candidates())
        .containsExactly("door", "void", "louvre", "vent");
  }

  @Test
  void offsetsHaveASide() {
    Seen seen = Seen.frame(MEMBERS, "anchors { dead-load C at L2 part angle-6 offset 1 }");
    assertThat(seen.problem(ModelProblem.Missing.class).what()).isEqualTo("which way it is offset");
  }

  @Test
  void placesInACircle() {
    Seen rows = Seen.grid("row a at 3 above b", "row b at 3 above a");
    ModelProblem.BadValue circle = rows.problem(ModelProblem.BadValue.class);
    assertThat(circle.reason()).isEqualTo(ModelProblem.BadValue.Reason.CIRCULAR);
    assertThat(circle.text()).isEqualTo("b = a = b");
    Seen lines = Seen.grid("line A at 3 right of B", "line B at 3 right of A");
    assertThat(lines.problem(ModelProblem.BadValue.class).reason())
        .isEqualTo(ModelProblem.BadValue.Reason.CIRCULAR);
    Seen floors = Seen.grid("floor a at 3 above b", "floor b at 3 above a");
    assertThat(floors.problem(ModelProblem.BadValue.class).reason())
        .isEqualTo(ModelProblem.BadValue.Reason.CIRCULAR);
  }

  @Test
  void oneMistakeGivesOneProblem() {
    // the lines cannot be read, and everything that names a line depends on them
    Seen seen =
        Seen.wall(
            """
            grid {
              lines A..G spaced 6 @ b
              floors L1, L2 spaced 156
              row sill at 2 above L1
              row head at 4 above L2
            }
            members {
              vertical A, G as jamb
              vertical B..F as mullion
              horizontal all
            }
            anchors { dead-load B..F at L2 part angle-6 }
            lites { vision V1 bays B..C }
            """);
    ModelProblem.UnknownName unknown = seen.problem(ModelProblem.UnknownName.class);
    assertThat(unknown.what() + " " + unknown.name()).isEqualTo("value b");
    // facts that do not depend on it are there
    assertThat(seen.rows()).isEqualTo("sill 2, head 160");
  }

  @Test
  void aMissingCatalogIsOneProblem() {
    Seen seen =
        Seen.of(
            "use \"nowhere.wall\"\nunits inches\nwall W {\nsystem captured-6\n"
                + "grid { lines A..C spaced 2 @ 60 }\n"
                + "members { vertical all as jamb-6 }\n}");
    seen.problem(ModelProblem.BadUse.class);
  }

  @Test
  void aBrokenLineCostsItselfOnly() {
    Seen seen =
        Seen.wall(
            """
            grid {
              lines A..C spaced 2 @
              floors L1, L2 spaced 156
              row sill at 2 above L1
            }
            members { vertical all }
            """);
    assertThat(seen.problems()).isEmpty();
    assertThat(seen.rows()).isEqualTo("sill 2");
  }

  @Test
  void wallsHaveNamesOfTheirOwn() {
    Seen seen = Seen.of("wall W { }\nwall W { }\n");
    assertThat(seen.problem(ModelProblem.Duplicate.class).what()).isEqualTo("wall");
  }
}
