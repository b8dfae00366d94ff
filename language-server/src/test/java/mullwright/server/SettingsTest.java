package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import mullwright.quantity.UnitSystem;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
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
    return Settings.read(JsonParser.parseString(json), true);
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
        .contains("mullwright.properties, “editor.lense” is not known. Is “lens” meant?");
  }

  @Test
  void aNameThatIsNotKnownIsToldOnce() throws InterruptedException {
    assertThat(of("{\"hints\": {\"lenghts\": false}, \"java\": {\"home\": \"\"}}").problems())
        .containsExactly(
            "The setting “mullwright.hints.lenghts” is not known. Is “hints.lengths” meant? Known"
                + " are hints.lengths, hints.glass, hints.grid, lens, units.");
    assertThat(of("{\"severity\": {\"unused\": \"off\"}, \"lens\": [1]}").problems())
        .containsExactly(
            "The setting “mullwright.severity.unused” is not known. Severities are the project's,"
                + " in mullwright.properties at the root.",
            "The setting “mullwright.lens” is “[1]”; it may be on, off.");
    JsonElement whole = JsonParser.parseString("{\"python\": {\"path\": \"\"}, \"lense\": true}");
    assertThat(Settings.read(whole, false).problems()).hasSize(1);
    Conversation talk = new Conversation("settings");
    InitializeParams parameters = new InitializeParams();
    parameters.setCapabilities(new ClientCapabilities());
    parameters.setInitializationOptions(Map.of("lense", false));
    Conversation.await(talk.server.initialize(parameters));
    talk.server.initialized(new InitializedParams());
    assertThat(told(talk)).contains("“mullwright.lense” is not known. Is “lens” meant?");
    for (String name : new String[] {"lense", "lense", "hint.glass"}) {
      talk.server
          .getWorkspaceService()
          .didChangeConfiguration(
              new DidChangeConfigurationParams(Map.of("mullwright", Map.of(name, false))));
    }
    assertThat(told(talk)).contains("“mullwright.hint.glass” is not known");
    talk.close();
  }

  private static String told(Conversation talk) throws InterruptedException {
    return talk.heard.logged.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS).getMessage();
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
