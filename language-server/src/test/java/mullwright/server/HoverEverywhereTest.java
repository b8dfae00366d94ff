package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every word, number, unit and mark of the examples says something when it is pointed at. */
class HoverEverywhereTest {
  private static final Path EXAMPLES = Path.of("..", "examples");

  @TempDir Path folder;

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".wall")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noTokenIsWithoutAnAnswer(Path example) throws IOException {
    String text = Files.readString(example);
    ParsedFile file = ParsedFile.parse(text);
    LineTable lines = LineTable.of(text);
    try (Conversation talk = Conversation.greeted("hover", EXAMPLES, AbleClient.pushed())) {
      String address = Conversation.address(example);
      talk.open(address, text);
      List<String> asked = new ArrayList<>();
      List<CompletableFuture<Hover>> answers = new ArrayList<>();
      for (int segment = 0; segment < file.segments().size(); segment++) {
        for (Token token : file.tokens(segment)) {
          // what a comment says is for people; one that the program reads is asked for elsewhere
          if (token.kind() != TokenKind.COMMENT) {
            int start = file.segmentStart(segment) + token.range().start();
            int end = file.segmentStart(segment) + token.range().end();
            Position at = new Position(lines.line(start), lines.column(start));
            asked.add("line " + (at.getLine() + 1) + ": " + text.substring(start, end));
            answers.add(
                talk.server
                    .getTextDocumentService()
                    .hover(new HoverParams(new TextDocumentIdentifier(address), at)));
          }
        }
      }
      List<String> silent = new ArrayList<>();
      for (int i = 0; i < answers.size(); i++) {
        Hover hover = await(answers.get(i));
        if (hover == null || hover.getContents().getRight().getValue().isBlank()) {
          silent.add(asked.get(i));
        }
      }
      assertThat(asked).hasSizeGreaterThan(100);
      assertThat(silent).as("tokens of %s without an answer", example).isEmpty();
    }
  }

  @Test
  void tellsWhatACommentAllows() {
    String text = "wall East {\n  grid {\n  } // allow glass-missing: by others\n}\n";
    try (Conversation talk = Conversation.greeted("hover", folder, AbleClient.pushed())) {
      String address = Conversation.address(folder.resolve("allowed.wall"));
      talk.open(address, text);
      Hover hover =
          await(
              talk.server
                  .getTextDocumentService()
                  .hover(
                      new HoverParams(new TextDocumentIdentifier(address), new Position(2, 10))));
      assertThat(hover.getContents().getRight().getValue())
          .startsWith("**allow glass-missing**")
          .contains("allowed here");
    }
  }
}
