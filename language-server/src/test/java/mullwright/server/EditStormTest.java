package mullwright.server;

import static mullwright.server.Conversation.await;
import static mullwright.server.TextPlaces.at;
import static mullwright.server.TextPlaces.boundary;
import static mullwright.server.TextPlaces.length;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import mullwright.format.Formatter;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten thousand random edits go over the wire to a server while a mirror takes the same. Every few
 * hundred edits the text in the server is that of the mirror, and what the server says of it is
 * what one says that has just read it from the start.
 */
class EditStormTest {
  private static final int EDITS = 3400;
  private static final int BETWEEN_LOOKS = 340;

  private static final String[] PIECES = {
    "{",
    "}\n",
    "\"",
    "row x at 1\"\n",
    " ",
    "ö",
    "🙂",
    "𝛀",
    "\r\n",
    "\n",
    "\r",
    "/*",
    "*/",
    "// ",
    "3'-6",
    "vertical B as mullion\n",
    "1/2\"",
    "all",
    ", ",
    "..",
    "let b = 4'-0\"\n",
    "\t",
    "\u2028",
    "e\u0301"
  };

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"utf-8, false", "utf-16, true", "utf-32, false"})
  void theServerKeepsStepWithItsClient(String encoding, boolean carriageReturns)
      throws IOException {
    Path examples = Path.of("..", "examples");
    Conversation.write(
        folder,
        "catalog/captured.wall",
        Files.readString(examples.resolve("catalog/captured.wall")));
    String start = Files.readString(examples.resolve("ferry-terminal/east.wall"));
    start = start.replace("an invented project", "“invented” 🙂 projéct");
    if (carriageReturns) {
      start = start.replace("\n", "\r\n");
    }
    String address = Conversation.address(folder.resolve("walls/east.wall"));
    SplittableRandom random = new SplittableRandom(encoding.hashCode());
    PositionEncoding columns = PositionEncoding.chosen(List.of(encoding));
    String name = "storm-" + encoding;
    try (Conversation talk = Conversation.greeted(name, folder, client(encoding))) {
      StringBuilder mirror = new StringBuilder(start);
      talk.open(address, start);
      for (int edits = 0; edits < EDITS; ) {
        int version = 0;
        for (int i = 0; i < BETWEEN_LOOKS; ) {
          List<TextDocumentContentChangeEvent> changes = new ArrayList<>();
          for (int together = 1 + random.nextInt(3); together > 0; together--, i++) {
            changes.add(edit(mirror, random, columns));
          }
          version = talk.change(address, changes);
          if (random.nextInt(20) == 0) {
            // somebody asks while edits come; what is answered then is of no interest here
            talk.server
                .getTextDocumentService()
                .hover(
                    new HoverParams(
                        which(address),
                        at(mirror.toString(), random.nextInt(mirror.length() + 1), columns)));
          }
        }
        edits += BETWEEN_LOOKS;
        look(talk, address, version, mirror.toString(), columns, name, encoding);
        if (random.nextInt(4) == 0) {
          mirror = new StringBuilder(start);
          talk.replace(address, start);
        }
      }
      assertThat(talk.heard.logged).isEmpty();
    }
  }

  /** The text is the mirror's, and all answers are those of a server that has just opened it. */
  private void look(
      Conversation talk,
      String address,
      int version,
      String mirror,
      PositionEncoding columns,
      String name,
      String encoding) {
    assertThat(laidOut(talk, address, mirror, columns))
        .isEqualTo(Formatter.format(ParsedFile.parse(mirror)));
    Object findings = talk.heard.of(address, version).getDiagnostics();
    List<Object> kept = answers(talk, address, mirror, columns);
    try (Conversation cold = Conversation.greeted(name, folder, client(encoding))) {
      cold.open(address, mirror);
      assertThat(findings).isEqualTo(cold.heard.next(address).getDiagnostics());
      List<Object> fresh = answers(cold, address, mirror, columns);
      for (int i = 0; i < fresh.size(); i++) {
        assertThat(kept.get(i)).as("answer " + i).isEqualTo(fresh.get(i));
      }
      assertThat(cold.heard.logged).isEmpty();
    }
  }

  private static List<Object> answers(
      Conversation talk, String address, String mirror, PositionEncoding columns) {
    TextDocumentService text = talk.server.getTextDocumentService();
    TextDocumentIdentifier which = which(address);
    List<Object> answers = new ArrayList<>();
    answers.add(await(text.semanticTokensFull(new SemanticTokensParams(which))).getData());
    answers.add(await(text.documentSymbol(new DocumentSymbolParams(which))));
    answers.add(await(text.foldingRange(new FoldingRangeRequestParams(which))));
    answers.add(
        await(
            text.inlayHint(
                new InlayHintParams(
                    which, new Range(new Position(0, 0), at(mirror, mirror.length(), columns))))));
    for (int offset = 0; offset < mirror.length(); offset += 211) {
      answers.add(
          await(text.hover(new HoverParams(which, at(mirror, boundary(mirror, offset), columns)))));
    }
    return answers;
  }

  /** What the server's own layout makes of the mirror: right only if it has that very text. */
  private static String laidOut(
      Conversation talk, String address, String mirror, PositionEncoding columns) {
    List<? extends TextEdit> edits =
        await(
            talk.server
                .getTextDocumentService()
                .formatting(
                    new DocumentFormattingParams(which(address), new FormattingOptions(2, true))));
    StringBuilder text = new StringBuilder(mirror);
    LineTable lines = LineTable.of(mirror);
    for (int i = edits.size() - 1; i >= 0; i--) {
      Range range = edits.get(i).getRange();
      text.replace(
          offset(mirror, lines, range.getStart(), columns),
          offset(mirror, lines, range.getEnd(), columns),
          edits.get(i).getNewText());
    }
    return text.toString();
  }

  private static TextDocumentContentChangeEvent edit(
      StringBuilder mirror, SplittableRandom random, PositionEncoding columns) {
    String text = mirror.toString();
    int start = boundary(text, random.nextInt(text.length() + 1));
    int end =
        boundary(
            text,
            Math.min(
                text.length(),
                start + (random.nextInt(40) == 0 ? random.nextInt(400) : random.nextInt(9))));
    String piece = random.nextInt(3) == 0 ? "" : PIECES[random.nextInt(PIECES.length)];
    if (random.nextInt(12) == 0) {
      // pasted from elsewhere in the text
      int from = boundary(text, random.nextInt(text.length() + 1));
      piece =
          text.substring(from, boundary(text, Math.min(text.length(), from + random.nextInt(300))));
    }
    Range range = new Range(at(text, start, columns), at(text, end, columns));
    mirror.replace(start, end, piece);
    return new TextDocumentContentChangeEvent(range, piece);
  }

  private static int offset(String text, LineTable lines, Position at, PositionEncoding columns) {
    int offset = lines.start(at.getLine());
    for (int passed = 0; passed < at.getCharacter(); ) {
      int end = text.offsetByCodePoints(offset, 1);
      passed += length(text.substring(offset, end), columns);
      offset = end;
    }
    return offset;
  }

  private static TextDocumentIdentifier which(String address) {
    return new TextDocumentIdentifier(address);
  }

  private static ClientCapabilities client(String encoding) {
    ClientCapabilities capabilities = new ClientCapabilities();
    GeneralClientCapabilities general = new GeneralClientCapabilities();
    general.setPositionEncodings(List.of(encoding));
    capabilities.setGeneral(general);
    return capabilities;
  }
}
