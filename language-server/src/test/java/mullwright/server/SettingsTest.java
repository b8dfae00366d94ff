package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import mullwright.quantity.UnitSystem;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The ways settings come: by the project's file, at the start, when asked for, when they change.
 */
class SettingsTest {
  @TempDir Path folder;

  private static Settings of(String json) {
    return Settings.read(JsonParser.parseString(json));
  }

  @Test
  void readsNestedAndDottedAndLeavesTheEditorsOwnAlone() {
    Settings settings =
        of(
            "{\"mullwright\": {\"hints\": {\"glass\": false}, \"lens\": \"off\", \"trace.server\": \"verbose\"}}");
    assertThat(settings.on(Settings.HINTS_GLASS)).isFalse();
    assertThat(settings.on(Settings.LENS)).isFalse();
    assertThat(settings.on(Settings.HINTS_LENGTHS)).isTrue();
    assertThat(settings.problems()).isEmpty();
    assertThat(of("[1]")).isEqualTo(Settings.NONE);
    assertThat(of("{\"units\": 7}").problems())
        .singleElement()
        .asString()
        .contains("may be file, inches, millimetres");
  }

  @Test
  void theEditorGoesBeforeTheProjectWhichGoesBeforeTheDefault() {
    Settings project =
        Settings.read("editor.units = millimetres\neditor.lens = off\nseverity.unused = off\n");
    assertThat(project.units(UnitSystem.US)).isEqualTo(UnitSystem.SI);
    Settings both = project.under(of("{\"lens\": true}"));
    assertThat(both.on(Settings.LENS)).isTrue();
    assertThat(both.units(UnitSystem.US)).isEqualTo(UnitSystem.SI);
    assertThat(Settings.read("editor.lense = off\n").problems())
        .singleElement()
        .asString()
        .contains("mullwright.properties, “editor.lense” is not known");
  }

  @Test
  void takesThemAtTheStartAndAsksForThem() throws InterruptedException {
    ClientCapabilities client =
        ProtocolTalk.capabilities(
            JsonParser.parseString(
                """
                {"workspace": {"configuration": true, "codeLens": {"refreshSupport": true},
                  "didChangeConfiguration": {"dynamicRegistration": true}}}
                """));
    Conversation talk = new Conversation("settings");
    talk.heard.settings = Map.of("lens", true);
    InitializeParams parameters = new InitializeParams();
    parameters.setCapabilities(client);
    parameters.setInitializationOptions(Map.of("lens", false));
    Conversation.await(talk.server.initialize(parameters));
    String address = Conversation.address(folder.resolve("east.wall"));
    talk.open(address, WallTalk.WALL.text());
    CodeLensParams ask = new CodeLensParams(new TextDocumentIdentifier(address));
    assertThat(Conversation.await(talk.server.getTextDocumentService().codeLens(ask))).isEmpty();
    talk.server.initialized(new InitializedParams());
    // answered settings are another than those at the start, so lenses are to be fetched again
    assertThat(talk.heard.refreshes.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS))
        .isEqualTo("codeLenses");
    assertThat(talk.heard.registrations.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS))
        .satisfies(
            it ->
                assertThat(it.getRegistrations().get(0).getMethod())
                    .isEqualTo("workspace/didChangeConfiguration"));
    talk.close();
  }
}
