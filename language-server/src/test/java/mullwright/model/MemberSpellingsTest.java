package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import org.junit.jupiter.api.Test;

/** The spellings of members, anchors, lites and installation, worked out by hand. */
class MemberSpellingsTest {
  private static String block(String name, String... lines) {
    return name + " {\n" + String.join("\n", lines) + "\n}";
  }

  private static final String PLAIN =
      block("members", "vertical A, E as jamb", "vertical B..D as mullion", "horizontal all");

  @Test
  void verticalsTakeTheRoleOfTheirPlaceIfNoneIsSaid() {
    Seen seen = Seen.frame(block("members", "vertical all", "horizontal all")).sound();
    assertThat(seen.verticals())
        .isEqualTo("A jamb-6, B mullion-6, C mullion-6, D mullion-6, E jamb-6");
    assertThat(seen.wall().members().verticals().get(1).profile())
        .satisfies(
            profile -> {
              assertThat(profile.assumed()).isTrue();
              assertThat(profile.source())
                  .isEqualTo("the system's mullion, by where the line stands");
            });
  }

  @Test
  void aProfileMayBeNamedInsteadOfARole() {
    Seen seen = Seen.frame(block("members", "vertical all as mullion-6", "horizontal all")).sound();
    assertThat(seen.wall().members().verticals())
        .allMatch(vertical -> vertical.profile().value().equals("mullion-6"))
        .noneMatch(vertical -> vertical.profile().assumed());
  }

  @Test
  void aVerticalStandsOnADoorHead() {
    Seen seen =
        Seen.frame(
                block(
                    "members",
                    "vertical all as mullion",
                    "vertical C from L1.R to head",
                    "horizontal all"))
            .sound();
    Members.Vertical third = seen.wall().members().verticals().get(2);
    // what the narrower statement does not say, it takes from the wider one
    assertThat(third.profile().value()).isEqualTo("mullion-6");
    assertThat(third.from().orElseThrow().elevation()).isEqualTo(Length.ofInches(36));
    assertThat(third.from().orElseThrow().base()).contains("L1.R");
    // 26'-0" + 4"
    assertThat(third.to().orElseThrow().elevation()).isEqualTo(Length.ofInches(316));
    assertThat(seen.wall().members().verticals()).hasSize(5);
  }

  @Test
  void twoRunsOfOneLine() {
    Seen seen =
        Seen.frame(
                block(
                    "members",
                    "vertical all from sill to L2 as mullion",
                    "vertical all from L2 to head as jamb",
                    "horizontal all"))
            .sound();
    assertThat(
            seen.wall().members().verticals().stream()
                .filter(vertical -> vertical.line() == 1)
                .map(
                    vertical ->
                        vertical.profile().value()
                            + " "
                            + vertical.from().orElseThrow().base().orElseThrow()
                            + " "
                            + vertical.to().orElseThrow().base().orElseThrow())
                .toList())
        .containsExactly("mullion-6 sill L2", "jamb-6 L2 head");
  }

  @Test
  void aNarrowerProfileHoldsForBothRuns() {
    Seen seen =
        Seen.frame(
                block(
                    "members",
                    "vertical all from sill to L2 as mullion",
                    "vertical all from L2 to head as mullion",
                    "vertical C as jamb",
                    "horizontal all"))
            .sound();
    assertThat(
            seen.wall().members().verticals().stream()
                .filter(vertical -> vertical.line() == 2)
                .map(vertical -> vertical.profile().value())
                .toList())
        .containsExactly("jamb-6", "jamb-6");
  }

  @Test
  void aHorizontalCanDifferInSomeBays() {
    Seen seen =
        Seen.frame(
                block(
                    "members",
                    "vertical all",
                    "horizontal all",
                    "horizontal L2.R as sill bays B..D"))
            .sound();
    assertThat(
            seen.wall().members().horizontals().stream()
                .filter(horizontal -> seen.row(horizontal.row()).equals("L2.R"))
                .map(horizontal -> horizontal.profile().value())
                .toList())
        .containsExactly("rail-6", "sill-6", "sill-6", "rail-6");
  }

  @Test
  void everySecondSpliceOnEverySecondFloor() {
    Seen seen =
        Seen.wall(
                """
            grid {
              lines 1..5 spaced 4 @ 60
              floors L1..L6 spaced 5 @ 156
              row sill at 2 above L1
              row head at 4 above L6
            }
            members {
              vertical all
              horizontal all
              splice 1..5 every 2 at 2'-0" above L2..L5 every 2 gap 3/4"
            }
            """)
            .sound();
    // lines 1, 3, 5 on floors L2 and L4: 156 + 24 and 468 + 24
    assertThat(seen.wall().members().splices())
        .extracting(
            splice ->
                seen.line(splice.line())
                    + " "
                    + splice.at().base().orElseThrow()
                    + " "
                    + Seen.inches(splice.at().elevation()))
        .containsExactly("1 L2 180", "1 L4 492", "3 L2 180", "3 L4 492", "5 L2 180", "5 L4 492");
  }

  @Test
  void anUnstatedGapIsADefaultThatSaysSo() {
    Seen seen =
        Seen.frame(block("members", "vertical all", "horizontal all", "splice C at 24 above L2"))
            .sound();
    Given<Length> gap = seen.wall().members().splices().get(0).gap();
    // common practice
    assertThat(gap.value()).isEqualTo(Length.ofInches(1, 2));
    assertThat(gap.assumed()).isTrue();
  }

  @Test
  void reinforcementReachesFromPlaceToPlace() {
    Seen seen =
        Seen.of(
                """
            use "captured.wall"
            units millimetres
            catalog { reinforcement bar-5 { Ix 2 in4 } }
            wall W {
              system captured-6
              grid {
                lines A..E spaced 4 @ 1500
                floors L1, L2 spaced 4000
                row sill at 50 above L1
                row head at 100 above L2
              }
              members {
                vertical all
                horizontal all
                reinforce B, C, E with bar-5 from 600 above L1 to 400 below L2 isolated by nylon-pad
              }
            }
            """)
            .sound();
    assertThat(seen.wall().members().reinforcements())
        .extracting(
            bar ->
                seen.line(bar.line())
                    + " "
                    + bar.part().value()
                    + " "
                    + bar.from().orElseThrow().elevation()
                    + " "
                    + bar.to().orElseThrow().elevation()
                    + " "
                    + bar.isolation().orElseThrow().value())
        .containsExactly(
            "B bar-5 600 mm 3600 mm nylon-pad",
            "C bar-5 600 mm 3600 mm nylon-pad",
            "E bar-5 600 mm 3600 mm nylon-pad");
  }

  /** As for splices and anchors, lines come first and at which height after {@code at}. */
  @Test
  void anEndDamStandsBesideLinesAtARow() {
    Seen seen =
        Seen.frame(block("members", "vertical all", "horizontal all", "end-dam A, E at sill, L2.R"))
            .sound();
    assertThat(seen.model().references())
        .filteredOn(it -> !it.definition() && it.symbol().kind() == Symbol.Kind.LINE)
        .extracting(it -> it.symbol().name())
        .contains("A", "E");
  }

  @Test
  void aBracketBringsItsForces() {
    Seen seen =
        Seen.frame(
                block(
                    "members",
                    "vertical all",
                    "horizontal all",
                    "bracket B, C at L2.R 150 N down at 600 mm out, 900 N out bolted 4 x hex-half"))
            .sound();
    List<Members.Bracket> brackets = seen.wall().members().brackets();
    assertThat(brackets).extracting(bracket -> seen.line(bracket.line())).containsExactly("B", "C");
    Members.Bracket first = brackets.get(0);
    assertThat(first.at().base()).contains("L2.R");
    assertThat(first.bolted().orElseThrow().count()).isEqualTo(4);
    assertThat(first.loads()).extracting(Members.Load::direction).containsExactly("down", "out");
    assertThat(first.loads().get(0).force().value())
        .isEqualTo(Quantity.of(Rational.of(150), Unit.NEWTON));
    assertThat(first.loads().get(0).arm().orElseThrow().value())
        .isEqualTo(Length.ofMillimetres(600));
    assertThat(first.loads().get(1).arm()).isEmpty();
  }

  @Test
  void anchorsAtTheFloorBelowEachSplice() {
    Seen seen =
        Seen.frame(
                block(
                    "members",
                    "vertical all",
                    "horizontal all",
                    "splice A, C, E at 24 above L2",
                    "splice B, D at 24 above L1"),
                block("anchors", "dead-load all at floor below splices part angle-6"))
            .sound();
    assertThat(seen.anchors())
        .containsExactly(
            "A L2 dead-load angle-6",
            "B L1 dead-load angle-6",
            "C L2 dead-load angle-6",
            "D L1 dead-load angle-6",
            "E L2 dead-load angle-6");
  }

  @Test
  void anExceptionBelowASpliceInherits() {
    Seen seen =
        Seen.frame(
                block("members", "vertical all", "horizontal all", "splice all at 24 above L2"),
                block(
                    "anchors",
                    "dead-load all at floor below splices part angle-6 bolted 2 x hex-half",
                    "dead-load C at L2 offset 1 1/2\" right part slot-6"))
            .sound();
    AnchorUse third = seen.wall().anchors().get(2);
    assertThat(third.part().orElseThrow().value()).isEqualTo("slot-6");
    assertThat(third.offset().orElseThrow().value()).isEqualTo(Length.ofInches(3, 2));
    // inherited from the wider statement
    assertThat(third.bolted().orElseThrow().count()).isEqualTo(2);
    assertThat(seen.wall().anchors()).hasSize(5);
  }

  @Test
  void aStatedHeightTakesThePlaceOfThePartsBoltLine() {
    Seen seen =
        Seen.frame(
                PLAIN,
                block("anchors", "dead-load all at L2 part angle-6", "dead-load C at 6\" below L2"))
            .sound();
    assertThat(seen.anchors()).hasSize(5);
    AnchorUse third = seen.wall().anchors().get(2);
    assertThat(third.heightStated()).isTrue();
    assertThat(third.place().elevation()).isEqualTo(Length.ofInches(150));
    assertThat(third.part().orElseThrow().value()).isEqualTo("angle-6");
    assertThat(seen.wall().anchors().get(1).heightStated()).isFalse();
  }

  @Test
  void theSystemTellsWhichClipSitsWhere() {
    Seen seen = Seen.frame(PLAIN, block("anchors", "clip all at sill", "clip A at head")).sound();
    assertThat(seen.anchors())
        .contains("A sill clip clip-sill", "A head clip clip-head", "E sill clip clip-sill");
  }

  @Test
  void clausesMayStandOneALine() {
    Seen seen =
        Seen.frame(
                PLAIN,
                block("anchors", "dead-load all {\n at L2\n part angle-6\n bedded on nylon-pad\n}"))
            .sound();
    assertThat(seen.wall().anchors())
        .hasSize(5)
        .allMatch(anchor -> anchor.bedding().orElseThrow().value().equals("nylon-pad"));
  }

  @Test
  void visionInSomeBaysOfSomeFloors() {
    Seen seen =
        Seen.wall(
                """
            grid {
              lines A..E spaced 4 @ 60
              floors L1..L4 spaced 3 @ 156
              row sill at 2 above L1
              row rail at 36 above L1..L3
              row top  at 114 above L1..L3
              row head at 4 above L4
            }
            lites {
              spandrel S1 all
              vision   V1 rows rail..top bays B..D
              vision   V1 rows L2.rail..L2.top bays A..B mark "G7"
            }
            """)
            .sound();
    // from below: sill, three times rail and top, head: seven cells a bay
    assertThat(seen.glass(0)).isEqualTo("S1 S1 S1 V1 S1 S1 S1");
    assertThat(seen.glass(1)).isEqualTo("S1 V1 S1 V1 S1 V1 S1");
    assertThat(seen.glass(2)).isEqualTo("S1 V1 S1 V1 S1 V1 S1");
    assertThat(seen.glass(3)).isEqualTo("S1 S1 S1 S1 S1 S1 S1");
    assertThat(seen.wall().lites())
        .filteredOn(lite -> lite.mark().isPresent())
        .extracting(lite -> lite.mark().get() + " " + seen.row(lite.below()))
        .containsExactly("G7 L2.rail");
  }

  @Test
  void noLiteWhereAnOpeningIs() {
    Seen seen =
        Seen.wall(
                """
            grid {
              lines 1..4 spaced 3 @ 60
              floors L1, L2 spaced 156
              row sill      at 2 above L1
              row mid       at 40 above L1
              row door-head at 84 above L1
              row head      at 4 above L2
              opening door D1 bays 2..3 from L1 to door-head by others
            }
            members {
              vertical all
              horizontal all
            }
            lites { vision V1 all }
            """)
            .sound();
    // the door takes sill and mid of the second bay, and the two cells under its head
    assertThat(seen.glass(0)).isEqualTo("V1 V1 V1");
    assertThat(seen.glass(1)).isEqualTo("V1");
    assertThat(
            seen.wall().members().horizontals().stream()
                .filter(horizontal -> horizontal.bay() == 1)
                .map(horizontal -> seen.row(horizontal.row()))
                .toList())
        .containsExactly("door-head", "head");
  }

  @Test
  void aLouvreTakesOneCell() {
    Seen seen =
        Seen.frame(
                PLAIN,
                "grid { opening louvre LV-1 bays A..E rows L1.R..L2.R by others mass 6 psf }",
                "lites { vision V1 all }")
            .sound();
    assertThat(seen.glass(0)).isEqualTo("V1 V1");
    assertThat(seen.wall().members().horizontals()).hasSize(16);
  }

  @Test
  void operableLeaves() {
    Seen seen =
        Seen.frame(
                PLAIN, "lites {\n vision V1 all\n vision V1 bays B..C rows L1.R..L2.R operable\n}")
            .sound();
    assertThat(seen.wall().lites()).filteredOn(LiteUse::operable).hasSize(1);
  }

  @Test
  void theWorkMayStartFromTheRight() {
    Seen seen =
        Seen.frame(PLAIN, "installation {\n stick C..E start right\n ladder A..C\n}").sound();
    assertThat(seen.wall().installation().stretches())
        .extracting(
            stretch -> stretch.method() + " " + stretch.firstLine() + " " + stretch.fromRight())
        .containsExactly("STICK 2 true", "LADDER 0 false");
  }
}
