package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.DocumentRangesFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is put right while a text is typed, and of several ranges at once. */
class TypingTest extends ProtocolTalk {
  private static final FormattingOptions OPTIONS = new FormattingOptions(8, false);

  /** Types at {@code |} and answers what the text becomes; the typed character stands before it. */
  private String typed(String marked, String ch) {
    int at = marked.indexOf('|');
    String text = marked.replace("|", "");
    String address = open("walls/typed.wall", text);
    List<? extends TextEdit> edits =
        await(
            talk.server
                .getTextDocumentService()
                .onTypeFormatting(
                    new DocumentOnTypeFormattingParams(
                        new TextDocumentIdentifier(address), OPTIONS, position(text, at), ch)));
    talk.closeDocument(address);
    return WallTalk.apply(text, edits);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "5'-6 ; 5'-6\"",
        "4'6 1/2\" ; 4'-6 1/2\"",
        "5' 6\" ; 5'-6\"",
        "6-1/2\" ; 6 1/2\"",
        "5'-6 1/2\" ; 5'-6 1/2\""
      })
  void spellsFeetAndInchesAtTheEndOfTheLine(String written, String spelt) {
    assertThat(typed("let b = " + written.strip() + "\n|", "\n"))
        .isEqualTo("let b = " + spelt.strip() + "\n");
  }

  @Test
  void spellsThemWhenTheirMarkIsTyped() {
    assertThat(typed("let b = 4'6 1/2\"|\n", "\"")).isEqualTo("let b = 4'-6 1/2\"\n");
    assertThat(typed("use \"4'6|\n", "\"")).isEqualTo("use \"4'6\n");
  }

  @Test
  void leavesALengthAloneThatMayGoOn() {
    assertThat(typed("let b = 5'-6 |\n", " ")).isEqualTo("let b = 5'-6 \n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"5'-6,|\"", "5'-6,|\u2033", "5'-6 1/2,|\", 4'"})
  void givesNoSecondMarkToALengthThatACommaParts(String marked) {
    String line = inGrid("lines A..C spaced " + marked);
    assertThat(typed(line, ",")).isEqualTo(line.replace("|", ""));
  }

  @Test
  void spellsALengthThatACommaEnds() {
    assertThat(typed(inGrid("lines A..C spaced 5'-6,| 4'"), ","))
        .isEqualTo(inGrid("lines A..C spaced 5'-6\", 4'"));
  }

  private static String inGrid(String line) {
    return "wall East {\n  grid {\n    " + line + "\n  }\n}\n";
  }

  @Test
  void setsInANewLineByTheBracesItStandsIn() {
    assertThat(typed("wall East {\n|", "\n")).isEqualTo("wall East {\n  ");
    assertThat(typed("wall East {\n  grid {\n|\n  }\n}\n", "\n"))
        .isEqualTo("wall East {\n  grid {\n    \n  }\n}\n");
    assertThat(typed("wall East {\n  grid {\n    lines A..C spaced 5',\n|\n", "\n"))
        .isEqualTo("wall East {\n  grid {\n    lines A..C spaced 5',\n        \n");
  }

  @Test
  void setsAClosingBraceUnderItsBlock() {
    assertThat(typed("wall East {\n  grid {\n    }|\n}\n", "}"))
        .isEqualTo("wall East {\n  grid {\n  }\n}\n");
  }

  @Test
  void laysOutSeveralRangesAtOnce() {
    String text = "let a = 1\"+2\"\nlet b = 1\"+2\"\nlet c = 1\"+2\"\n";
    String address = open("walls/typed.wall", text);
    Range first = new Range(position(text, 0), position(text, 1));
    Range last =
        new Range(position(text, text.lastIndexOf("let")), position(text, text.length() - 1));
    List<? extends TextEdit> edits =
        await(
            talk.server
                .getTextDocumentService()
                .rangesFormatting(
                    new DocumentRangesFormattingParams(
                        new TextDocumentIdentifier(address), OPTIONS, List.of(first, last))));
    assertThat(WallTalk.apply(text, edits).lines())
        .containsExactly("let a   = 1\" + 2\"", "let b = 1\"+2\"", "let c   = 1\" + 2\"");
  }
}
