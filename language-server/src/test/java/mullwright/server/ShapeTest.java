package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Color;
import org.eclipse.lsp4j.ColorInformation;
import org.eclipse.lsp4j.ColorPresentation;
import org.eclipse.lsp4j.ColorPresentationParams;
import org.eclipse.lsp4j.DocumentColorParams;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.junit.jupiter.api.Test;

/** Folds, selections, links, colours and token differences as an able client gets them. */
class ShapeTest extends WallTalk {
  @Override
  ClientCapabilities client() {
    return AbleClient.pushed();
  }

  private static Conversation as(String foldingRange) {
    JsonObject json = AbleClient.json();
    json.getAsJsonObject("textDocument")
        .add("foldingRange", com.google.gson.JsonParser.parseString(foldingRange));
    return Conversation.greeted("folds", folder, AbleClient.capabilities(json));
  }

  private List<FoldingRange> folds(String capability) {
    return folds(capability, WALL.text());
  }

  private List<FoldingRange> folds(String capability, String of) {
    try (Conversation other = as(capability)) {
      other.open(address, of);
      return await(
          other.server.getTextDocumentService().foldingRange(new FoldingRangeRequestParams(which)));
    }
  }

  @Test
  void foldsFromBraceToBraceWhereTheClientCan() {
    int grid = lineOf(WALL.text(), "  grid {");
    assertThat(await(text.foldingRange(new FoldingRangeRequestParams(which))))
        .filteredOn(it -> it.getStartLine() == grid)
        .extracting(
            FoldingRange::getStartCharacter,
            FoldingRange::getEndLine,
            FoldingRange::getEndCharacter,
            FoldingRange::getKind,
            FoldingRange::getCollapsedText)
        .containsExactly(tuple("  grid {".length(), grid + 7, 2, "region", "… 6 statements"));
  }

  @Test
  void foldsWholeLinesAndNoMoreThanTheClientWants() {
    List<FoldingRange> all = folds("{\"lineFoldingOnly\": true}");
    assertThat(all).extracting(FoldingRange::getStartCharacter).containsOnlyNulls();
    assertThat(all).extracting(FoldingRange::getCollapsedText).containsOnlyNulls();
    int wall = lineOf(WALL.text(), "wall East");
    int project = lineOf(WALL.text(), "project");
    assertThat(folds("{\"lineFoldingOnly\": true, \"rangeLimit\": 2}"))
        .extracting(FoldingRange::getStartLine)
        .containsExactly(project, wall);
  }

  /** Editors that keep a tree of folds drop one that reaches out of the one around it. */
  @Test
  void foldsComeInTheOrderOfTheTextAndLieWithinEachOtherAlsoInBrokenText() {
    talk.replace(
        address,
        """
        // as drawn,
        // revision B
        wall W {
          lites {
            span{drel all
            vision V1 all
          }
        }

        // the other
        // wall
        wall X {
          grid {
            lines A..C
            floor L1
          }
        }
        """);
    List<FoldingRange> folds = await(text.foldingRange(new FoldingRangeRequestParams(which)));
    assertThat(folds).extracting(FoldingRange::getStartLine).isSorted().contains(0, 2, 3, 4, 9, 11);
    for (FoldingRange outer : folds) {
      for (FoldingRange inner : folds) {
        boolean reachesOut =
            outer.getStartLine() < inner.getStartLine()
                && inner.getStartLine() <= outer.getEndLine()
                && outer.getEndLine() < inner.getEndLine();
        assertThat(reachesOut).as(outer + " and " + inner).isFalse();
      }
    }
  }

  @Test
  void blocksOnTheSameLinesAreOneFold() {
    String text = "wall W { grid {\n  lines A..C\n  floor L1\n} }\n";
    assertThat(folds("{\"lineFoldingOnly\": true}", text)).hasSize(1);
    assertThat(folds("{}", text)).hasSize(2);
  }

  /** LSP 3.17, "The parent selection range containing this range": one that is the same is none. */
  @Test
  void noSelectionIsTheSameAsTheNextAlsoInBrokenText() {
    String broken = "project \"Harbour\r\n  revision C\r\n  criteria {\r\n    wind service\r\n";
    talk.replace(address, broken);
    List<Position> places = new ArrayList<>();
    for (int line = 0; line < 4; line++) {
      places.add(new Position(line, 4));
    }
    for (SelectionRange at : await(text.selectionRange(new SelectionRangeParams(which, places)))) {
      for (SelectionRange is = at; is.getParent() != null; is = is.getParent()) {
        assertThat(is.getParent().getRange()).isNotEqualTo(is.getRange());
      }
    }
  }

  @Test
  void everySelectionLiesWithinTheNextAndHasTheLine() {
    String commented = WALL.text().replace("horizontal all", "horizontal all // as drawn");
    talk.replace(address, commented);
    int line = lineOf(commented, "horizontal all");
    List<Position> places = List.of(new Position(line, 6), new Position(line, 25));
    List<SelectionRange> ranges =
        await(text.selectionRange(new SelectionRangeParams(which, places)));
    assertThat(texts(ranges.get(0), commented))
        .startsWith("horizontal", "horizontal all", "horizontal all // as drawn");
    assertThat(texts(ranges.get(1), commented)).startsWith("// as drawn");
  }

  /** LSP 3.17: a range for a position holds it. */
  @Test
  void everySelectionHoldsThePlaceAlsoInTheBlanksOfALineThatGoesOn() {
    String goesOn =
        WALL.text()
            .replace("2 @ 5'-0\"", "5'-0\",\n        5'-0\"")
            .replace("at L2  part angle-s", "{\n        at L2\n        part angle-s }");
    talk.replace(address, goesOn);
    List<Position> places = new ArrayList<>();
    for (String begins : List.of("        5'-0\"", "        at L2", "        part")) {
      places.add(new Position(lineOf(goesOn, begins), 3));
    }
    List<SelectionRange> ranges =
        await(text.selectionRange(new SelectionRangeParams(which, places)));
    for (int i = 0; i < places.size(); i++) {
      Range range = ranges.get(i).getRange();
      int at = Sweep.offset(goesOn, places.get(i));
      assertThat(Sweep.offset(goesOn, range.getStart())).isLessThanOrEqualTo(at);
      assertThat(Sweep.offset(goesOn, range.getEnd())).isGreaterThanOrEqualTo(at);
    }
  }

  private static List<String> texts(SelectionRange range, String text) {
    List<String> texts = new ArrayList<>();
    var lines = mullwright.syntax.LineTable.of(text);
    for (SelectionRange at = range; at != null; at = at.getParent()) {
      Range is = at.getRange();
      texts.add(
          text.substring(
              lines.offset(is.getStart().getLine(), is.getStart().getCharacter()),
              lines.offset(is.getEnd().getLine(), is.getEnd().getCharacter())));
      if (at.getParent() != null) {
        assertThat(texts.get(texts.size() - 1).length()).isLessThan(WALL.text().length() * 2);
      }
    }
    return texts;
  }

  @Test
  void saysWhereALinkLeads() {
    assertThat(await(text.documentLink(new DocumentLinkParams(which))))
        .extracting(it -> it.getTooltip())
        .containsExactly("Open catalog/small.wall");
  }

  @Test
  void showsTheColoursOfFinishesAndWritesAPickedOne() {
    String finishes =
        "catalog {\n  finish bronze {\n    colour \"#5b4636\"\n  }\n  finish odd {\n"
            + "    colour \"brown\"\n  }\n  gasket g {\n    colour \"#000000\"\n  }\n}\n";
    String parts = Conversation.address(folder.resolve("catalog/finishes.wall"));
    TextDocumentIdentifier in = new TextDocumentIdentifier(parts);
    talk.open(parts, finishes);
    List<ColorInformation> colors = await(text.documentColor(new DocumentColorParams(in)));
    Range place = new Range(new Position(2, 12), new Position(2, 19));
    assertThat(colors)
        .containsExactly(
            new ColorInformation(place, new Color(91 / 255.0, 70 / 255.0, 54 / 255.0, 1)));
    ColorPresentation picked =
        await(
                text.colorPresentation(
                    new ColorPresentationParams(in, new Color(1, 0.5, 0, 0.3), place)))
            .get(0);
    assertThat(picked.getLabel()).isEqualTo("#ff8000");
    assertThat(apply(finishes, List.of(picked.getTextEdit()))).contains("colour \"#ff8000\"");
    assertThat(talk.heard.next(parts).getDiagnostics())
        .extracting(it -> it.getRange().getStart().getLine())
        .contains(5)
        .doesNotContain(2);
  }

  @Test
  void findsTheBestFitFirst() {
    List<? extends WorkspaceSymbol> found =
        await(talk.server.getWorkspaceService().symbol(new WorkspaceSymbolParams("small")))
            .getRight();
    assertThat(found.get(0).getName()).isEqualTo("small");
  }

  /** Two far places change: two small edits, and not one over all that lies between. */
  @Test
  void tellsOnlyTheTokensThatChanged() {
    SemanticTokens before = await(text.semanticTokensFull(new SemanticTokensParams(which)));
    talk.change(address, WALL.range("useL2"), "L1, L2");
    talk.change(address, WALL.range("lines"), "A..C, D");
    SemanticTokensDelta since = since(before.getResultId());
    assertThat(since.getEdits()).hasSize(2);
    assertThat(since.getEdits().stream().mapToInt(it -> size(it)).sum()).isLessThan(50);
    assertThat(patched(before.getData(), since.getEdits()))
        .isEqualTo(await(text.semanticTokensFull(new SemanticTokensParams(which))).getData());
  }

  private static int size(SemanticTokensEdit edit) {
    return edit.getDeleteCount() + (edit.getData() == null ? 0 : edit.getData().size());
  }

  private SemanticTokensDelta since(String id) {
    return await(text.semanticTokensFullDelta(new SemanticTokensDeltaParams(which, id))).getRight();
  }

  @Test
  void nothingChangedIsNoEdit() {
    SemanticTokens before = await(text.semanticTokensFull(new SemanticTokensParams(which)));
    assertThat(since(before.getResultId()).getEdits()).isEmpty();
    assertThat(
            await(text.semanticTokensFullDelta(new SemanticTokensDeltaParams(which, "no such")))
                .isLeft())
        .isTrue();
  }

  @Test
  void editsOfAnyKindComeOutAsTheWhole() {
    SplittableRandom random = new SplittableRandom(7);
    SemanticTokens known = await(text.semanticTokensFull(new SemanticTokensParams(which)));
    String id = known.getResultId();
    List<Integer> data = known.getData();
    for (int round = 0; round < 60; round++) {
      for (int edit = random.nextInt(4); edit >= 0; edit--) {
        int line = random.nextInt(30);
        int end = random.nextInt(2);
        Range gone = new Range(new Position(line, 0), new Position(line + end, random.nextInt(9)));
        talk.change(address, gone, random.nextBoolean() ? "" : " row R at 3' // x\n");
      }
      SemanticTokensDelta since = since(id);
      data = patched(data, since.getEdits());
      id = since.getResultId();
    }
    assertThat(data)
        .isEqualTo(await(text.semanticTokensFull(new SemanticTokensParams(which))).getData());
  }

  /** As the protocol says: all edits count in the numbers of the old list. */
  private static List<Integer> patched(List<Integer> data, List<SemanticTokensEdit> edits) {
    List<Integer> patched = new ArrayList<>(data);
    List<SemanticTokensEdit> last = new ArrayList<>(edits);
    Collections.reverse(last);
    for (SemanticTokensEdit edit : last) {
      patched.subList(edit.getStart(), edit.getStart() + edit.getDeleteCount()).clear();
      patched.addAll(edit.getStart(), edit.getData() == null ? List.of() : edit.getData());
    }
    return patched;
  }
}
