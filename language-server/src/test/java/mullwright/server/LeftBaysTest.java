package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A method of installation is offered for the bays that have none yet. */
class LeftBaysTest extends ProtocolTalk {
  @Override
  JsonObject json() {
    JsonObject client = super.json();
    client
        .getAsJsonObject("textDocument")
        .add(
            "completion",
            JsonParser.parseString("{\"completionItem\": {\"snippetSupport\": true}}"));
    return client;
  }

  @ParameterizedTest
  @CsvSource({"'',A..F", "ladder A..C,C..F", "ladder B..C,A..B", "ladder A..F,A..F"})
  void theFirstThatAreLeft(String before, String left) {
    String head =
        ActionTest.EAST.substring(0, ActionTest.EAST.length() - 2)
            + "  installation {\n    "
            + before
            + "\n    ";
    String text = head + "\n  }\n}\n";
    String address = open("walls/east.wall", text);
    CompletionItem stick =
        await(
                talk.server
                    .getTextDocumentService()
                    .completion(
                        new CompletionParams(
                            new TextDocumentIdentifier(address), position(text, head.length()))))
            .getRight()
            .getItems()
            .stream()
            .filter(item -> item.getLabel().equals("stick"))
            .findFirst()
            .orElseThrow();
    String written =
        stick.getTextEdit() == null
            ? stick.getInsertText()
            : stick.getTextEdit().map(edit -> edit.getNewText(), edit -> edit.getNewText());
    assertThat(written).startsWith("stick ${1:" + left);
  }
}
