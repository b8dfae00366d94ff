package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.InsertReplaceRange;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.ParameterInformation;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.eclipse.lsp4j.SignatureInformation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an able client gets while a line is written: snippets, pages of offers, what is due. */
class WritingTest extends WallTalk {
  @Override
  ClientCapabilities client() {
    return AbleClient.pushed();
  }

  /** Types a line at the top of a block; the position at its end. */
  private Position type(String block, String line) {
    int below = lineOf(WALL.text(), "  " + block + " {") + 1;
    Position start = new Position(below, 0);
    talk.change(address, new Range(start, start), "    " + line + "\n");
    return new Position(below, 4 + line.length());
  }

  private CompletionList list(String block, String line) {
    return await(text.completion(new CompletionParams(which, type(block, line)))).getRight();
  }

  private CompletionItem item(String block, String line, String label) {
    return list(block, line).getItems().stream()
        .filter(it -> it.getLabel().equals(label))
        .findFirst()
        .orElseThrow();
  }

  /** Each goes on what the fixture has: lines A..C, floors L1, L2 at 13', rows sill, rail, head. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "grid    | line       | `line ${1:A.5} at ${2:2'-6\"} right of ${3_A,B,C_}$0`",
        "grid    | lines      | `lines ${1:D} at ${2:15'-0\"}$0`",
        "grid    | floor      | `floor ${1:L3} at ${2:26'-0\"} slab ${3:10\"}$0`",
        "grid    | row        | `row ${1:top} at ${2:9'-6\"} above ${3_L1,L2_}$0`",
        "grid    | floors     | `floors ${1:L3..L4} spaced ${2:1} @ ${3:13'-0\"} at ${4:26'-0\"}$0`",
        "grid    | face       | `face ${1:South} lines ${2:C..E} spaced ${3:2} @ ${4:5'-0\"}$0`",
        "grid    | corner     | `corner ${1:B} ${2:90} deg$0`",
        "grid    | joint      | `joint ${1:A..B}$0`",
        "criteria| wind       | `wind ${1:edge} ${2:32 psf} in, ${3:36 psf} out$0`",
        "criteria| exposure   | `exposure ${1_outdoor,sheltered,coastal,indoor_}$0`",
        "members | vertical   | `vertical ${1:A..C} as ${2_mullion,jamb,mullion-s_}$0`",
        "members | splice     | `splice ${1:all} at ${2:2'-0\"} above ${3:L2} gap ${4:5/8\"}$0`",
        "anchors | dead-load  | `dead-load ${1:all} at ${2_L1,L2_} part ${3:angle-s} bolted ${4:2}"
            + " x ${5:bolt-s} isolated by ${6:paint}$0`",
        "anchors | wind-load  | `wind-load ${1:all} at ${2_L1,L2_} part ${3:slot-s} bolted ${4:2}"
            + " x ${5:bolt-s} isolated by ${6:paint}$0`",
        "anchors | clip       | `clip ${1:all} at ${2_sill,head_}$0`",
        "lites   | vision     | `vision ${1:V1} rows ${2_sill,rail_}..${3_rail,head_}$0`",
      })
  void offersWholeStatementsThatGoOnWhatIsUnderWay(String block, String word, String snippet) {
    CompletionItem item = item(block, "", word);
    assertThat(item.getTextEditText()).isEqualTo(snippet.replace('_', '|'));
    assertThat(item.getInsertTextFormat()).isEqualTo(InsertTextFormat.Snippet);
    assertThat(item.getTextEdit()).isNull();
  }

  /** What a drafter would write over and not make up, in the units of the file. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "ply        | `ply ${1:1/4\"}$0`",
        "coating    | `coating ${1:low-e} surface ${2:2}$0`",
        "limit      | `limit ${1:6'-0\"} x ${2:10'-0\"}$0`",
        "edge-psi   | `edge-psi ${1:0.03 Btu/hftF}$0`",
      })
  void offersAPropertyOfAGlassWithWhatIsUsual(String word, String snippet) {
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    String before = SmallCatalog.TEXT.substring(0, SmallCatalog.TEXT.lastIndexOf('}'));
    talk.open(catalog, before + "  glass V9 {\n    \n  }\n}\n");
    assertThat(
            await(
                    text.completion(
                        new CompletionParams(
                            new org.eclipse.lsp4j.TextDocumentIdentifier(catalog),
                            new Position(lineOf(before + "  glass V9", "glass V9") + 1, 4))))
                .getRight()
                .getItems())
        .filteredOn(it -> it.getLabel().equals(word))
        .singleElement()
        .satisfies(it -> assertThat(it.getTextEditText()).isEqualTo(snippet));
  }

  @Test
  void offersNothingAFileSaysOnce() {
    talk.replace(address, WALL.text() + "\n");
    int end = mullwright.syntax.LineTable.of(WALL.text()).count() - 1;
    assertThat(
            await(text.completion(new CompletionParams(which, new Position(end, 0))))
                .getRight()
                .getItems())
        .extracting(CompletionItem::getLabel)
        .contains("wall", "catalog", "use")
        .doesNotContain("units", "project");
  }

  @Test
  void offersAPropertyWithTheProfilesOfItsRole() {
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    int line = lineOf(SmallCatalog.TEXT, "intermediate  rail-s");
    talk.open(catalog, SmallCatalog.TEXT.replace("    intermediate  rail-s\n", "    \n"));
    List<CompletionItem> items =
        await(
                text.completion(
                    new CompletionParams(
                        new org.eclipse.lsp4j.TextDocumentIdentifier(catalog),
                        new Position(line, 4))))
            .getRight()
            .getItems();
    assertThat(items)
        .filteredOn(it -> it.getLabel().equals("intermediate"))
        .extracting(CompletionItem::getTextEditText)
        .containsExactly("intermediate ${1|rail-s,mullion-s|}$0");
  }

  /** Editors that put in the second quote themselves have it behind the cursor. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`use \"` | `` | `../catalog/small.wall\"`",
        "`use \"../cat` | `` | `../catalog/small.wall\"`",
        "`use \"` | `\"` | `../catalog/small.wall`",
        "`use \"../cat` | `\"` | `../catalog/small.wall`",
      })
  void aChosenPathEndsWithItsQuote(String before, String behind, String written) {
    talk.replace(address, before + behind + "\n" + WALL.text());
    Position at = new Position(0, before.length());
    CompletionItem item =
        await(text.completion(new CompletionParams(which, at))).getRight().getItems().stream()
            .filter(it -> it.getLabel().equals("../catalog/small.wall"))
            .findFirst()
            .orElseThrow();
    String insert = item.getTextEditText() == null ? item.getLabel() : item.getTextEditText();
    assertThat(insert).isEqualTo(written);
  }

  @Test
  void tellsOnceWhatAllOffersReplace() {
    CompletionList list = list("members", "vertical B as mull");
    InsertReplaceRange range = list.getItemDefaults().getEditRange().getRight();
    assertThat(range.getInsert()).isEqualTo(range.getReplace());
    assertThat(range.getInsert().getStart().getCharacter())
        .isEqualTo("    vertical B as ".length());
    Position in = WALL.range("role").getStart();
    int line = in.getLine() + 1;
    Position inside = new Position(line, in.getCharacter() + 3);
    InsertReplaceRange both =
        await(text.completion(new CompletionParams(which, inside)))
            .getRight()
            .getItemDefaults()
            .getEditRange()
            .getRight();
    assertThat(both.getInsert())
        .isEqualTo(new Range(new Position(line, in.getCharacter()), inside));
    assertThat(both.getReplace().getEnd())
        .isEqualTo(new Position(line, in.getCharacter() + "mullion".length()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "anchors | `dead-load A at L2 part `| angle-s  | `bolt-line: 8\" (203.2 mm) below`",
        "members | `vertical `| B        | `5'-0\" (1524 mm) from the first line`",
        "anchors | `dead-load A at `| L2       | `top of slab: 13'-0\"`",
        "members | `vertical B as `| jamb     | `in wall East: mullion-s`",
        "members | `splice B at 2'-0\" above L2 `| gap      | `The open joint`",
        "members | ``| splice   | `written: splice LINES at PLACE gap LENGTH`",
        "grid    | `floor L3 at 7800 `| mm       | `A unit of length`",
      })
  void tellsOfAnOfferWhenItIsLookedAt(String block, String line, String label, String told) {
    CompletionItem item = item(block, line, label);
    assertThat(item.getDocumentation()).isNull();
    CompletionItem whole = await(text.resolveCompletionItem(item));
    assertThat(whole.getDocumentation().getRight().getKind()).isEqualTo("markdown");
    assertThat(whole.getDocumentation().getRight().getValue().replace("\\", "")).contains(told);
    assertThat(whole.getLabel()).isEqualTo(label);
  }

  @Test
  void resolvesNonsenseToItself() {
    CompletionItem item = new CompletionItem("x");
    assertThat(await(text.resolveCompletionItem(item))).isEqualTo(item);
    JsonObject data = new JsonObject();
    data.addProperty("file", address);
    data.addProperty("kind", "line");
    data.addProperty("name", "nobody");
    item.setData(data);
    assertThat(await(text.resolveCompletionItem(item)).getDocumentation()).isNull();
  }

  /** A line as far as the cursor, the part that is due there, or none once all is there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "members | `splice `| LINES",
        "members | `splice B`| LINES",
        "members | `splice B `| at PLACE",
        "members | `splice B at `| at PLACE",
        "members | `splice B at 2'-0\" above L2 `| gap LENGTH",
        "members | `splice B at 2'-0\" above L2 gap 5/8\" `| [sleeve SLEEVE]",
        "members | `splice B at 2'-0\" above L2 gap 5/8\" sleeve s `| ``",
        "anchors | `dead-load A at L2 part `| [part ANCHOR]",
        "anchors | `dead-load A at L2 part angle-s bolted 2 x `| [bolted NUMBER x FASTENER]",
      })
  void tellsWhatIsDueWhileAStatementIsWritten(String block, String line, String due) {
    SignatureHelp help =
        await(text.signatureHelp(new SignatureHelpParams(which, type(block, line))));
    SignatureInformation signature = help.getSignatures().get(0);
    List<ParameterInformation> parts = signature.getParameters();
    // an editor shows the one below the other
    assertThat(parts)
        .extracting(ParameterInformation::getDocumentation)
        .doesNotContain(signature.getDocumentation());
    if (due.isEmpty()) {
      assertThat(help.getActiveParameter()).isEqualTo(parts.size());
    } else {
      var offsets = parts.get(help.getActiveParameter()).getLabel().getRight();
      assertThat(signature.getLabel().substring(offsets.getFirst(), offsets.getSecond()))
          .isEqualTo(due);
    }
  }

  @Test
  void tellsTheWaysToWriteAProperty() {
    int line = lineOf(WALL.text(), "wind field");
    SignatureHelp help =
        await(
            text.signatureHelp(
                new SignatureHelpParams(
                    which, new Position(line, "    wind field  32 psf ".length()))));
    SignatureInformation active = help.getSignatures().get(help.getActiveSignature());
    assertThat(active.getLabel()).startsWith("wind [WORD] PRESSURE in|out");
    var offsets = active.getParameters().get(help.getActiveParameter()).getLabel().getRight();
    assertThat(active.getLabel().substring(offsets.getFirst(), offsets.getSecond()))
        .isEqualTo("in|out");
  }

  @Test
  void tellsNothingWhereNoStatementIsUnderWay() {
    assertThat(await(text.signatureHelp(new SignatureHelpParams(which, type("grid", "")))))
        .isNull();
    assertThat(await(text.signatureHelp(new SignatureHelpParams(which, type("grid", "// a ")))))
        .isNull();
  }
}
