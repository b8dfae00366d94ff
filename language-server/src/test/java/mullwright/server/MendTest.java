package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;

/** Diagnostics and the actions that mend them. */
class MendTest extends WallTalk {
  /**
   * A length would be wrong there, whatever `units` says of bare numbers, and so would the other
   * unit of temperature beside those the statement has.
   */
  @Test
  void offersTheUnitsOfWhatIsAskedFor() {
    int version = talk.replace(address, WALL.text().replace("set at 60 F", "set at 60"));
    Diagnostic bare =
        talk.heard.of(address, version).getDiagnostics().stream()
            .filter(it -> it.getCode().getLeft().equals("wrong-unit"))
            .findFirst()
            .orElseThrow();
    assertThat(bare.getMessage().getLeft()).contains("60", "no unit", "F").doesNotContain("inches");
    assertThat(
            await(
                text.codeAction(
                    new CodeActionParams(
                        which, bare.getRange(), new CodeActionContext(List.of(bare))))))
        .extracting(Either::getRight)
        .filteredOn(it -> it.getKind().equals(CodeActionKind.QuickFix) && it.getEdit() != null)
        .extracting(it -> it.getEdit().getChanges().get(address).get(0).getNewText())
        .contains("60 F")
        .doesNotContain("60 C", "60\"", "60 mm");
  }

  @Test
  void mendsAMisspeltName() {
    int version = talk.change(address, WALL.range("useL2"), "L22");
    Diagnostic slip =
        talk.heard.of(address, version).getDiagnostics().stream()
            .filter(it -> it.getCode().getLeft().equals("unknown-name"))
            .findFirst()
            .orElseThrow();
    List<Either<Command, CodeAction>> actions =
        await(
            text.codeAction(
                new CodeActionParams(
                    which, slip.getRange(), new CodeActionContext(List.of(slip)))));
    CodeAction mend =
        actions.stream()
            .map(Either::getRight)
            .filter(it -> it.getEdit().getChanges().get(address).get(0).getNewText().equals("L2"))
            .findFirst()
            .orElseThrow();
    assertThat(mend.getKind()).isEqualTo(CodeActionKind.QuickFix);
    assertThat(mend.getDiagnostics()).containsExactly(slip);
    String broken = apply(WALL.text(), List.of(new TextEdit(WALL.range("useL2"), "L22")));
    assertThat(apply(broken, mend.getEdit().getChanges().get(address))).isEqualTo(WALL.text());
  }
}
