package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is offered where, by what stands before the cursor. */
class CompletionTest extends WallTalk {
  /** A block, a line typed into it as far as the cursor, what must be offered, what must not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "grid    | `ro`                            | row, floor, lines        | vertical, dead-load",
        "grid    | `row x at 3'-0\" above `| L1, L2, rail             | A, angle-s",
        "grid    | `floor L3 at 26'-0\" `| slab, edge, note         | at, gap",
        "grid    | `opening `| door, louvre             | A, V1",
        "grid    | `floor L3 at 7800 `| mm, m                    | psf",
        "members | ``                              | vertical, splice         | row, vision",
        "members | `vertical `| all, A, B, C             | L1, rail",
        "members | `horizontal `| all, sill, rail          | A",
        "members | `vertical B as `| jamb, mullion-s          | angle-s, V1, rail-s, sill",
        "members | `horizontal rail as `| sill, rail-s        | mullion-s, jamb",
        "members | `vertical B from L1 to `| L2, rail, head    | L1, A",
        "members | `vertical B from rail to `| L2, head        | L1, rail, sill",
        "members | `vertical B..`| C                        | A, B, all",
        "grid    | `lines `| D                             | A, L1",
        "grid    | `floor `| L3                            | A, L2",
        "members | `splice B at 2'-0\" above L2 `| gap, sleeve, hold        | at, part",
        "anchors | `dead-load A at L2 part `| angle-s                  | clip-s, V1, mullion-s",
        "anchors | `clip A at sill part `| clip-s                   | angle-s",
        "anchors | `dead-load A at L2 bolted 2 x `| bolt-s                   | angle-s",
        "anchors | `dead-load A at L2 isolated by `| paint                    | bolt-s",
        "anchors | `dead-load A at `| L1, L2, rail             | A, paint",
        "lites   | `vision `| V1                       | angle-s, A",
        "lites   | `vision V1 bays `| A, B, C                  | rail, L2",
        "lites   | `vision V1 rows sill.. `| rail, head               | A, sill",
        "anchors | `wind-load A at L2 part `| slot-s                   | angle-s",
        "grid    | `row x at 3'-0\" `| above, below, only       | at, L1",
        "grid    | `row x at 3'-0\" above L1 `| to, except, only     | above, at",
        "grid    | `line C.5 at 2\" `| right of, left of         | above",
        "grid    | `lines D..F spaced 2 `| @, equal in            | psf",
        "grid    | `opening door `| D1                        | bays, from, note",
        "grid    | `opening door D1 `| bays, from, by others   | D1",
        "grid    | `floor L3 at 26' edge 2\" `| behind glass         | slab, note",
        "grid    | `corner `| B                         | all, A, C",
        "grid    | `joint `| A, B, C                   | all",
        "members | `vertical A..C `| every, except, as        | at",
        "members | `bracket A..C `| every, except, at         | as",
        "members | `end-dam A..C `| every, except, at         | as",
        "members | `vertical B from L1 `| to                       | as, L2",
        "members | `bracket B at L2 40 `| lb, kN                   | mm, down",
        "members | `bracket B at L2 40 lb `| down, in, out        | bolted",
        "anchors | `dead-load A at `| floor below splices      | A",
        "anchors | `dead-load A at L2 bolted `| 2 x bolt-s               | bolt-s",
        "anchors | `dead-load A at L2 bolted 2 `| x                        | bolt-s, mm, part",
        "anchors | `dead-load A at L2 bolted 2 x bolt-s `| isolated by     | bolt-s, x",
        "anchors | `dead-load A at L2 offset 2\" `| left, right              | part",
        "lites   | `vision V1 `| all, rows                | A",
        "grid    | `row R9 at 3`| mm, ', \"               | verify, above",
        "grid    | `row R9 at 3 `| mm, m                  | ', \"",
      })
  void offers(String block, String line, String wanted, String unwanted) {
    List<String> offered = at(block, line);
    assertThat(offered).contains(wanted.split(", "));
    assertThat(offered).doesNotContain(unwanted.split(", "));
  }

  /** What a property's patterns have a place for after what is written, and nothing else. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`wind edge 30 `| psf, Pa, kPa, psi, ksi, MPa, N/mm2, GPa",
        "`wind edge 30 psf `| in, out",
        "`wind edge 30 psf in, 40 psf out `| within, from",
        "`wind edge 30 psf in, 40 psf out within 5' `| of",
        "`wind edge 30 psf in, 40 psf out from L1 `| to",
        "`wind speed 115 mph, exposure `| B, C, D",
        "`wind roof `| height, slope",
        "`wind service, `| ``",
        "`exposure `| outdoor, sheltered, coastal, indoor",
        "`metal `| temperature, set",
        "`metal temperature -10 `| F, C, K",
        "`metal temperature -10 F `| to",
        "`metal temperature -10 F to 150 F, `| set",
        "`slab deflection `| ``",
        "`slab deflection 1/2\" `| L1, L2",
        "`deflection `| limit",
        "`safety floor line 4\" `| above, below",
        "`safety floor line 4\" above `| L1, L2",
      })
  void offersWhatAPropertyMayGoOnWith(String line, String all) {
    assertThat(at("criteria", line))
        .isEqualTo(all.isEmpty() ? List.of() : List.of(all.split(", ")));
  }

  @Test
  void offersNoPropertyTwice() {
    assertThat(at("criteria", "")).contains("wind", "slab", "exposure").doesNotContain("metal");
  }

  /** Types a line at the top of a block and asks at its end. */
  private List<String> at(String block, String line) {
    int below = lineOf(WALL.text(), "  " + block + " {") + 1;
    Position start = new Position(below, 0);
    talk.change(address, new Range(start, start), "    " + line + "\n");
    return await(
            text.completion(new CompletionParams(which, new Position(below, 4 + line.length()))))
        .getRight()
        .getItems()
        .stream()
        .map(CompletionItem::getLabel)
        .toList();
  }

  @Test
  void offersThePropertiesOfAPart() {
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    talk.open(catalog, SmallCatalog.TEXT);
    int line = lineOf(SmallCatalog.TEXT, "bolt-line");
    Position start = new Position(line, 0);
    talk.change(catalog, new Range(start, start), "    ca\n");
    List<CompletionItem> items =
        await(
                text.completion(
                    new CompletionParams(
                        new org.eclipse.lsp4j.TextDocumentIdentifier(catalog),
                        new Position(line, 6))))
            .getRight()
            .getItems();
    assertThat(items).extracting(CompletionItem::getLabel).contains("capacity", "reach", "slot");
    assertThat(items.get(0).getTextEdit().getLeft().getRange())
        .isEqualTo(new Range(new Position(line, 4), new Position(line, 6)));
  }

  @Test
  void offersFilesInAUse() {
    Position inside = WALL.range("path").getStart();
    inside.setCharacter(inside.getCharacter() + 1);
    assertThat(await(text.completion(new CompletionParams(which, inside))).getRight().getItems())
        .extracting(CompletionItem::getLabel)
        .contains("../catalog/small.wall");
  }

  @Test
  void offersNothingInACommentOrANumber() {
    Position at = WALL.at("psf");
    talk.change(address, new Range(at, at), "// ");
    Position inside = new Position(at.getLine(), at.getCharacter() + 3);
    assertThat(await(text.completion(new CompletionParams(which, inside))).getRight().getItems())
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"row R9 at ‹›3 above L1", "row R9 at ‹›12'-0\"", "void { }‹›", "void { } ro‹›w"})
  void offersNothingThatWouldStickToANumberOrStandBehindABlock(String line) {
    int below = lineOf(WALL.text(), "  grid {") + 1;
    Position start = new Position(below, 0);
    talk.change(address, new Range(start, start), line.replace("‹›", "") + "\n");
    Position at = new Position(below, line.indexOf('‹'));
    assertThat(await(text.completion(new CompletionParams(which, at))).getRight().getItems())
        .isEmpty();
  }
}
