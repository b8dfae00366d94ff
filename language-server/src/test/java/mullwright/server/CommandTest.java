package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.ServiceLoader;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.junit.jupiter.api.Test;

/** Commands an editor asks for by name. */
class CommandTest extends WallTalk {
  @Test
  void anUnknownCommandIsRefusedWithASentence() {
    String refusal =
        refusal(
            talk.server
                .getWorkspaceService()
                .executeCommand(new ExecuteCommandParams("mullwright.nothing", List.of())));
    assertThat(refusal).contains("There is no command 'mullwright.nothing'.");
  }

  @Test
  void everyCommandIsNamedAsTheOthers() {
    for (CommandSource source : ServiceLoader.load(CommandSource.class)) {
      for (Command command : source.commands()) {
        assertThat(command.name()).matches("mullwright\\.[a-z][a-zA-Z]*");
      }
    }
  }
}
