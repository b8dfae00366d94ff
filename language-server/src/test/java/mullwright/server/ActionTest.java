package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is offered to be done to a text, and what the text becomes. */
class ActionTest extends ProtocolTalk {
  static final String EAST =
      """
      use "../catalog/small.wall"
      wall East {
        system small
        grid {
          lines A..F  spaced 5 @ 5'-0"
          floor L1    at 0"     slab 6"
          floor L2    at 13'-0" slab 10"
          row   sill  at 2" above L1
          row   head  at 4" below L2
        }
        members {
          vertical A  as jamb
          vertical B  as mullion
          vertical C  as mullion
          vertical D  as mullion
          vertical E  as mullion
          vertical F  as jamb
          horizontal all
        }
        anchors {
          clip A, B, C, D at sill
        }
        lites {
          vision V1 all
        }
      }
      """;

  @Test
  void mendsAreWorkedOutWhenPickedAndOneMendsAllOfAKind() {
    String text = EAST.replace("clip A", "clipp A").replace("vertical B", "verticall B");
    String address = open("walls/east.wall", text);
    List<CodeAction> here = actions(address, text, "clipp", CodeActionKind.QuickFix);
    CodeAction mend = titled(here, "Write clip");
    assertThat(mend.getIsPreferred()).isTrue();
    assertThat(mend.getDiagnostics())
        .isNotEmpty()
        .isSubsetOf(talk.heard.next(address).getDiagnostics());
    assertThat(after(picked(mend), address, text)).isEqualTo(text.replace("clipp", "clip"));
    assertThat(after(picked(titled(here, "Mend all 2 of “unreadable”")), address, text))
        .isEqualTo(EAST);
    CodeAction all = actions(address, text, "wall East", "source.fixAll").get(0);
    assertThat(all.getKind()).isEqualTo("source.fixAll");
    assertThat(after(picked(all), address, text)).isEqualTo(EAST);
  }

  @Test
  void mendsAreOfferedWhereverOnTheLineTheCursorIs() {
    String text = EAST.replace("as jamb\n    vertical B", "as jmab  // end\n    vertical B");
    String address = open("walls/east.wall", text);
    CodeAction mend =
        titled(actions(address, text, "ical A", CodeActionKind.QuickFix), "Write jamb");
    assertThat(after(picked(mend), address, text)).isEqualTo(text.replace("jmab", "jamb"));
    titled(actions(address, text, "end\n", CodeActionKind.QuickFix), "Write jamb");
    assertThat(actions(address, text, "vertical B", CodeActionKind.QuickFix))
        .noneMatch(it -> it.getTitle().equals("Write jamb"));
  }

  @Test
  void offersOnlyTheKindsThatAreWanted() {
    String text =
        EAST.replace("lines A..F  spaced", "lines A..F spaced").replace("clip A", "clipp A");
    String address = open("walls/east.wall", text);
    assertThat(actions(address, text, "clipp", "refactor"))
        .noneMatch(it -> it.getKind().equals(CodeActionKind.QuickFix));
    List<CodeAction> sources = actions(address, text, "clipp", "source");
    assertThat(sources)
        .extracting(CodeAction::getKind)
        .containsExactly("source.fixAll", "source.format");
    String laidOut = after(picked(sources.get(1)), address, text);
    assertThat(laidOut).isNotEqualTo(text);
    assertThat(actions(address, text, "clipp", "notebook")).isEmpty();
  }

  @Test
  void anActionOfATextThatHasChangedIsRefusedAsModified() {
    String text = EAST.replace("clip A", "clipp A");
    String address = open("walls/east.wall", text);
    CodeAction mend = titled(actions(address, text, "clipp"), "Write clip");
    talk.replace(address, "\n" + text);
    assertThat(WallTalk.refusal(talk.server.getTextDocumentService().resolveCodeAction(mend)))
        .contains("moved on");
  }

  @Test
  void aListOfNeighboursBecomesARange() {
    String address = open("walls/east.wall", EAST);
    CodeAction range = titled(actions(address, EAST, "A, B, C, D at"), "Write A, B, C, D as A..D");
    assertThat(after(picked(range), address, EAST))
        .isEqualTo(EAST.replace("A, B, C, D at", "A..D at"));
  }

  @Test
  void theLinesOfDamsBecomeARangeToo() {
    String text =
        EAST.replace(
            "    vertical A  as jamb\n",
            "    vertical A  as jamb\n    end-dam A, B, C at sill part dam-6\n");
    String address = open("walls/east.wall", text);
    CodeAction range = titled(actions(address, text, "A, B, C at sill"), "Write A, B, C as A..C");
    assertThat(after(picked(range), address, text))
        .isEqualTo(text.replace("A, B, C at sill", "A..C at sill"));
  }

  @Test
  void statementsThatSayTheSameOfNeighboursBecomeOne() {
    String address = open("walls/east.wall", EAST);
    CodeAction one =
        titled(actions(address, EAST, "C  as mullion"), "Write these 4 statements as one, of B..E");
    assertThat(after(picked(one), address, EAST))
        .contains("    vertical A  as jamb\n    vertical B..E  as mullion\n    vertical F");
    assertThat(titles(actions(address, EAST, "A  as jamb"))).noneMatch(it -> it.contains("as one"));
  }

  /** Two lines are fewer than three, so that what is said of them would be the narrower then. */
  @Test
  void statementsThatOverrideAnotherDoNotBecomeOneThatDoesNot() {
    String text = EAST.replace("    vertical F", "    vertical C..D  as rail-s\n    vertical F");
    String address = open("walls/east.wall", text);
    CodeAction one =
        titled(actions(address, text, "C  as mullion"), "Write these 4 statements as one, of B..E");
    assertThat(WallTalk.refusal(talk.server.getTextDocumentService().resolveCodeAction(one)))
        .contains("The text stays as it is, since “vertical C as” in wall East would be another.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/* one */ A, B, C, D at", "A, /* two */ B, C, D at", "A, B, C, D at /* three */"})
  void aListThatHoldsACommentKeepsIt(String list) {
    String text = EAST.replace("A, B, C, D at", list);
    String address = open("walls/east.wall", text);
    List<CodeAction> offers = actions(address, text, "B, C, D at");
    for (CodeAction offer : offers) {
      if (offer.getTitle().startsWith("Write A")) {
        assertThat(after(picked(offer), address, text)).contains("/*");
      }
    }
    assertThat(titles(offers).stream().anyMatch(it -> it.startsWith("Write A")))
        .isNotEqualTo(list.contains("two"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "vertical /* D */ D  as mullion",
        "vertical D  as mullion  // D",
        "vertical D  as mullion  /* D */",
        "// D\n    vertical D  as mullion",
      })
  void aCommentOnOneOfTheStatementsKeepsItApart(String commented) {
    String text =
        EAST.replace("vertical D  as mullion", commented)
            .replace("    vertical E  as mullion\n", "");
    String address = open("walls/east.wall", text);
    assertThat(titles(actions(address, text, "C  as mullion")))
        .noneMatch(it -> it.contains("as one"));
  }

  @Test
  void aCommentBetweenSpacingsIsKeptWhereALineMoves() {
    String text =
        EAST.replace("5 @ 5'-0\"", "5'-0\",  // the door\n      3 @ 5'-0\", /* end */ 5'");
    String address = open("walls/east.wall", text);
    CodeAction right = titled(actions(address, text, "C  as mull"), "Move line C 1\" to the right");
    assertThat(right.getDisabled()).isNull();
    assertThat(after(picked(right), address, text))
        .isEqualTo(text.replace("3 @ 5'-0\"", "5'-1\", 4'-11\", 5'-0\""));
    CodeAction over = titled(actions(address, text, "B  as mull"), "Move line B 1\" to the right");
    assertThat(over.getDisabled().getReason())
        .isEqualTo("A comment stands between the spacings that change; move it first.");
  }

  @Test
  void aLineThatMovesBackMakesItsBaysEqualAgain() {
    String text = EAST.replace("5 @ 5'-0\"", "5'-0\", 5'-1\", 4'-11\", 2 @ 5'-0\"");
    String address = open("walls/east.wall", text);
    CodeAction left = titled(actions(address, text, "C  as mull"), "Move line C 1\" to the left");
    assertThat(after(picked(left), address, text)).isEqualTo(EAST);
  }

  /**
   * 60" and 60" become 61" and 59": the two bays' horizontals (sill and head, 4 pieces) and their
   * two lites are others; the verticals are not.
   */
  @Test
  void aLineIsMovedAndTheReaderToldWhatFollows() {
    String address = open("walls/east.wall", EAST);
    List<CodeAction> here = actions(address, EAST, "C  as mullion");
    CodeAction right = picked(titled(here, "Move line C 1\" to the right"));
    assertThat(after(right, address, EAST))
        .isEqualTo(EAST.replace("5 @ 5'-0\"", "5'-0\", 5'-1\", 4'-11\", 2 @ 5'-0\""));
    assertThat(annotation(right).getDescription())
        .contains("4 pieces are cut to another length, 2 lites are to be ordered");
    CodeAction first = titled(actions(address, EAST, "A  as jamb"), "Move line A 1\" to the right");
    assertThat(first.getDisabled().getReason()).contains("counted from the first line");
  }

  /** 5'-0" = 1524 mm, 13'-0" = 3962.4 mm, 10" = 254 mm (1" = 25.4 mm exactly). */
  @Test
  void lengthsAreWrittenExactlyInTheOtherUnits() {
    String address = open("walls/east.wall", EAST);
    CodeAction metric =
        picked(titled(actions(address, EAST, "5'-0\""), "Write all lengths of this file in milli"));
    String text = after(metric, address, EAST);
    assertThat(text)
        .contains("5 @ 1524 mm")
        .contains("at 3962.4 mm slab 254 mm")
        .contains("at 50.8 mm above L1")
        .doesNotContain("\" ")
        .contains("use \"../catalog/small.wall\"");
    talk.replace(address, text);
    CodeAction back =
        picked(titled(actions(address, text, "1524 mm"), "Write all lengths of this file in feet"));
    assertThat(after(back, address, text)).isEqualTo(EAST);
  }

  @Test
  void unitsAreNotSwitchedWhereALengthHasNoExactSpelling() {
    String text = EAST.replace("5 @ 5'-0\"", "5 @ 1500 mm");
    String address = open("walls/east.wall", text);
    CodeAction action =
        titled(actions(address, text, "1500 mm"), "Write all lengths of this file in feet");
    assertThat(action.getDisabled().getReason())
        .isEqualTo("“1500 mm” on line 5 has no exact spelling in feet and inches.");
  }

  /** Numbers without a unit are lengths too: 60 inches are 1524 mm, 10 inches 254 mm. */
  @Test
  void numbersWithoutAUnitAreSwitchedToo() {
    String text =
        EAST.replace("5 @ 5'-0\"", "5 @ 60")
            .replace("slab 10\"", "slab 10")
            .replace("  grid {", "  units inches\n  grid {");
    String address = open("walls/east.wall", text);
    CodeAction metric =
        picked(titled(actions(address, text, "10\n"), "Write all lengths of this file in milli"));
    assertThat(after(metric, address, text))
        .contains("units millimetres")
        .contains("5 @ 1524 mm")
        .contains("at 3962.4 mm slab 254 mm")
        .contains("at 50.8 mm above L1");
    String millimetres =
        text.replace("units inches", "units millimetres").replaceAll("\\d+(?:'-\\d+)?\"", "1500");
    talk.replace(address, millimetres);
    CodeAction back = titled(actions(address, millimetres, "millimetres"), "Write all lengths");
    assertThat(back.getDisabled().getReason())
        .endsWith("has no exact spelling in feet and inches.");
  }

  @Test
  void whatABareNumberIsStaysWhereItIsOfThatSystemAlready() {
    String text =
        EAST.replace("5 @ 5'-0\"", "5 @ 1524 mm").replace("  grid {", "  units feet\n  grid {");
    String address = open("walls/east.wall", text);
    CodeAction feet =
        titled(actions(address, text, "1524 mm"), "Write all lengths of this file in");
    assertThat(after(picked(feet), address, text))
        .isEqualTo(text.replace("5 @ 1524 mm", "5 @ 5'-0\""));
  }

  /** The first line of a face is the last of the one before it. */
  @Test
  void aLineOfASecondFaceMoves() {
    String text =
        EAST.replace(
            "lines A..F  spaced 5 @ 5'-0\"",
            "face South lines A..C spaced 2 @ 5'-0\"\n"
                + "    face East lines C..F spaced 3 @ 5'-0\"\n"
                + "    corner C 90 deg");
    String address = open("walls/east.wall", text);
    CodeAction right =
        picked(titled(actions(address, text, "D  as mullion"), "Move line D 1\" to the right"));
    assertThat(after(right, address, text))
        .isEqualTo(text.replace("3 @ 5'-0\"", "5'-1\", 4'-11\", 5'-0\""));
    CodeAction end =
        picked(titled(actions(address, text, "F  as jamb"), "Move line F 1\" to the right"));
    assertThat(after(end, address, text))
        .isEqualTo(text.replace("3 @ 5'-0\"", "2 @ 5'-0\", 5'-1\""));
  }

  @Test
  void aPartMovesToTheCatalogThatIsUsed() {
    String part = "  /// Two plies.\n  glass V9 {\n    ply 1/4\" annealed clear\n  }\n";
    String text = "use \"../catalog/small.wall\"\ncatalog {\n" + part + "}\n" + EAST.substring(28);
    String address = open("walls/east.wall", text.replace("vision V1", "vision V9"));
    String opened = text.replace("vision V1", "vision V9");
    CodeAction move =
        picked(
            titled(
                actions(address, opened, "glass V9", "refactor.extract"), "Move glass V9 to the"));
    assertThat(after(move, address, opened)).isEqualTo(opened.replace(part, ""));
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    assertThat(after(move, catalog, SmallCatalog.TEXT))
        .isEqualTo(SmallCatalog.TEXT.substring(0, SmallCatalog.TEXT.length() - 2) + part + "}\n");
  }

  @Test
  void aWallMovesToAFileOfItsOwn() {
    String west = EAST.substring(28).replace("wall East", "wall West-Side");
    String text = EAST + "\n" + west;
    String address = open("walls/both.wall", text);
    CodeAction split =
        picked(titled(actions(address, text, "wall West-Side"), "Move wall West-Side to a file"));
    String made = Conversation.address(folder.resolve("walls/west-side.wall"));
    assertThat(split.getEdit().getDocumentChanges().get(0).getRight().getKind())
        .isEqualTo("create");
    assertThat(after(split, made, ""))
        .startsWith("use \"../catalog/small.wall\"\nuse \"both.wall\"\n")
        .endsWith(west);
    assertThat(after(split, address, text)).isEqualTo(EAST);
    assertThat(annotation(split).getDescription()).contains("uses walls/both.wall");
  }

  /** 2 feet would be 2 inches in a catalog in inches; no size hangs on it, nothing is found. */
  @Test
  void aPartStaysWhoseNumbersWouldMeanSomethingElse() {
    String text =
        "use \"../catalog/small.wall\"\nunits feet\n"
            + "catalog {\n  fastener bolt-9 {\n    metal steel\n    length 2\n  }\n}\n"
            + EAST.substring(28).replace("at sill", "at sill bolted 2 x bolt-9");
    String address = open("walls/east.wall", text);
    CodeAction move =
        titled(actions(address, text, "r bolt-9", "refactor.extract"), "Move fastener bolt-9 to");
    assertThat(WallTalk.refusal(talk.server.getTextDocumentService().resolveCodeAction(move)))
        .contains(
            "fastener bolt-9 stays where it is, since “part fastener bolt-9 length” in wall East"
                + " would be another.");
  }

  /** A file and what moves into it end their lines alike, whatever they did before. */
  @Test
  void whatMovesEndsItsLinesAsTheFileItMovesTo() {
    String west = EAST.substring(28).replace("wall East", "wall West");
    String two = (EAST + "\n" + west).replace("\n", "\r\n");
    String address = open("walls/both.wall", two);
    CodeAction split = picked(titled(actions(address, two, "wall West"), "Move wall West to a f"));
    assertThat(after(split, Conversation.address(folder.resolve("walls/west.wall")), ""))
        .isEqualTo(
            ("use \"../catalog/small.wall\"\nuse \"both.wall\"\n\n" + west).replace("\n", "\r\n"));
    String part = "  glass V9 {\n    ply 1/4\" annealed clear\n  }\n";
    String text = "use \"../catalog/small.wall\"\ncatalog {\n" + part + "}\n";
    String catalog = SmallCatalog.TEXT.replace("\n", "\r\n");
    String home = open(SmallCatalog.PATH, catalog);
    String from = open("walls/part.wall", text);
    CodeAction move =
        picked(titled(actions(from, text, "glass V9", "refactor.extract"), "Move glass V9 to the"));
    assertThat(after(move, home, catalog))
        .isEqualTo(
            catalog.substring(0, catalog.length() - 3) + (part + "}\n").replace("\n", "\r\n"));
  }

  @Test
  void aWallThatMovesTakesTheUnitsAndValuesOfItsProjectAlong() {
    String project = "project \"P\" {\n  units inches\n  let tall = 156\n}\n";
    String east = EAST.replace("slab 6\"", "slab 6").replace("13'-0\"", "tall");
    String west = east.substring(28).replace("wall East", "wall West");
    String text = east.substring(0, 28) + project + east.substring(28) + "\n" + west;
    String address = open("walls/units.wall", text);
    CodeAction split =
        picked(titled(actions(address, text, "wall West"), "Move wall West to a file"));
    assertThat(after(split, Conversation.address(folder.resolve("walls/west.wall")), ""))
        .isEqualTo(
            "use \"../catalog/small.wall\"\nuse \"units.wall\"\nunits inches\nlet tall = 156\n\n"
                + west);
  }

  @Test
  void aWallThatMovesLeavesNoBlankLinesTooMany() {
    String south = EAST.substring(28).replace("wall East", "wall South");
    String west = EAST.substring(28).replace("wall East", "wall West");
    String text = EAST + "\n" + south + "\n" + west;
    String address = open("walls/three.wall", text);
    CodeAction middle = titled(actions(address, text, "wall South"), "Move wall South to a file");
    assertThat(after(picked(middle), address, text)).isEqualTo(EAST + "\n" + west);
  }
}
