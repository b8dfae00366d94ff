package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wall is written from its first line on: what is not closed yet goes on at the cursor. */
class OpenBlockTest extends ProtocolTalk {
  @ParameterizedTest
  @CsvSource({
    "'wall East {\n  ',system,catalog",
    "'wall East {\n  system ',small,system",
    "'wall East {\n  system small\n  grid {\n    ',lines,catalog",
    "'wall East {\n  system small\n  grid {\n    lines A..C spaced 2 @ 5''\n    ',floor,wall",
    "'wall East {\n  grid {\n  }\n  ',members,lines",
    "'wall East {\n}\n',wall,grid"
  })
  void offersWhatStandsInTheBlockThatIsOpen(String written, String wanted, String unwanted) {
    String text = "use \"../catalog/small.wall\"\n" + written;
    String address = open("walls/east.wall", text);
    assertThat(
            await(
                    talk.server
                        .getTextDocumentService()
                        .completion(
                            new CompletionParams(
                                new TextDocumentIdentifier(address),
                                position(text, text.length()))))
                .getRight()
                .getItems())
        .extracting(CompletionItem::getLabel)
        .contains(wanted)
        .doesNotContain(unwanted);
  }
}
