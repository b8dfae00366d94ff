package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentLink;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;

/** Outline, folding, selection, hints, links, layout and colours of a text. */
class TextTest extends WallTalk {
  @Test
  void outlinesTheFile() {
    List<DocumentSymbol> outline =
        await(text.documentSymbol(new DocumentSymbolParams(which))).stream()
            .map(Either::getRight)
            .toList();
    assertThat(outline)
        .extracting(DocumentSymbol::getName)
        .containsExactly("use \"../catalog/small.wall\"", "project \"Larkhaven Annexe\"", "East");
    assertThat(outline.get(2).getSelectionRange()).isEqualTo(WALL.range("wall"));
    assertThat(outline.get(2).getChildren())
        .extracting(DocumentSymbol::getName)
        .containsExactly("system small", "grid", "members", "anchors", "lites");
  }

  @Test
  void foldsBlocks() {
    int wall = lineOf(WALL.text(), "wall East");
    int last = (int) WALL.text().lines().count() - 1;
    assertThat(await(text.foldingRange(new FoldingRangeRequestParams(which))))
        .extracting(FoldingRange::getStartLine, FoldingRange::getEndLine)
        .contains(tuple(wall, last - 1));
  }

  @Test
  void growsASelection() {
    SelectionRange range =
        await(text.selectionRange(new SelectionRangeParams(which, List.of(WALL.at("useRail")))))
            .get(0);
    List<Range> ranges = new ArrayList<>();
    for (SelectionRange at = range; at != null; at = at.getParent()) {
      ranges.add(at.getRange());
    }
    assertThat(ranges.get(0)).isEqualTo(WALL.range("useRail"));
    assertThat(ranges).hasSizeGreaterThan(5);
    assertThat(ranges.get(ranges.size() - 1).getStart()).isEqualTo(new Position(0, 0));
  }

  /** 12'-8 1/2" as above; the bay's 60" less 2 1/2" less two allowances of 1/32": 57 7/16". */
  @Test
  void hintsCutLengthsAndGlassSizesAtLineEnds() {
    List<InlayHint> hints = await(text.inlayHint(new InlayHintParams(which, whole())));
    assertThat(hints)
        .extracting(InlayHint::getPosition, hint -> hint.getLabel().getLeft())
        .contains(
            tuple(WALL.at("verticalEnd"), "12'-8 1/2\""),
            tuple(WALL.at("horizontalEnd"), "4'-9 7/16\""));
    assertThat(hints)
        .filteredOn(hint -> hint.getPosition().equals(WALL.at("narrowEnd")))
        .extracting(hint -> hint.getLabel().getLeft())
        .containsExactly("4'-10 1/2\" × 2'-8 1/2\"");
  }

  private static Range whole() {
    return new Range(new Position(0, 0), new Position(999, 0));
  }

  @Test
  void linksTheUsedFile() {
    List<DocumentLink> links = await(text.documentLink(new DocumentLinkParams(which)));
    assertThat(links)
        .extracting(DocumentLink::getTarget)
        .containsExactly(Conversation.address(folder.resolve(SmallCatalog.PATH)));
  }

  @Test
  void laysOutTheDocument() {
    talk.replace(address, WALL.text().replace("      floor L1    at", "floor L1 at"));
    List<? extends TextEdit> edits =
        await(
            text.formatting(new DocumentFormattingParams(which, new FormattingOptions(8, false))));
    assertThat(edits).isNotEmpty();
    String laidOut =
        apply(WALL.text().replace("      floor L1    at", "floor L1 at"), new ArrayList<>(edits));
    talk.replace(address, laidOut);
    assertThat(
            await(
                text.formatting(
                    new DocumentFormattingParams(which, new FormattingOptions(8, false)))))
        .isEmpty();
    assertThat(
            await(
                text.rangeFormatting(
                    new DocumentRangeFormattingParams(
                        which, new FormattingOptions(2, true), WALL.range("wall")))))
        .isEmpty();
  }

  @Test
  void tellsTokensWholeSinceAndInARange() {
    SemanticTokens all = await(text.semanticTokensFull(new SemanticTokensParams(which)));
    assertThat(all.getData().size() % 5).isZero();
    talk.change(address, WALL.range("reach"), "B");
    SemanticTokensDelta since =
        await(text.semanticTokensFullDelta(new SemanticTokensDeltaParams(which, all.getResultId())))
            .getRight();
    List<Integer> patched = new ArrayList<>(all.getData());
    for (SemanticTokensEdit edit : since.getEdits()) {
      patched.subList(edit.getStart(), edit.getStart() + edit.getDeleteCount()).clear();
      patched.addAll(edit.getStart(), edit.getData() == null ? List.of() : edit.getData());
    }
    assertThat(patched)
        .isEqualTo(await(text.semanticTokensFull(new SemanticTokensParams(which))).getData());
    SemanticTokens part =
        await(
            text.semanticTokensRange(new SemanticTokensRangeParams(which, WALL.range("useRail"))));
    assertThat(part.getData())
        .startsWith(WALL.at("useRail").getLine(), WALL.at("useRail").getCharacter(), 4)
        .hasSize(5);
  }
}
