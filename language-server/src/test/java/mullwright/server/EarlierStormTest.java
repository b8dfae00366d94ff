package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Servers come and go over a folder of walls that are typed in, saved, taken away and put back,
 * while a server is there and while none is. Whatever each shows early, what it shows in the end is
 * what one shows that has never seen the folder.
 */
class EarlierStormTest {
  private static final int SESSIONS = 60;
  private static final int STEPS = 6;
  private static final String SETTINGS = "mullwright.properties";
  private static final List<String> PATHS =
      List.of("walls/east.wall", "walls/west.wall", SmallCatalog.PATH);

  /** Few, so that what was is often again. */
  private static final List<String> PIECES = List.of("row   rail", "angle-s", "isolated by paint");

  @TempDir Path walls;
  @TempDir Path kept;

  private final SplittableRandom chance = new SplittableRandom(7);
  private EarlierTalks talks;
  private int early;

  @BeforeEach
  void write() {
    talks = new EarlierTalks(walls, kept);
    PATHS.forEach(path -> Conversation.write(walls, path, whole(path)));
  }

  private static String whole(String path) {
    return path.equals(SmallCatalog.PATH) ? SmallCatalog.TEXT : WallTalk.WALL.text();
  }

  /** One of the few texts a file may have. */
  private String any(String path) {
    String text = whole(path);
    String piece = PIECES.get(chance.nextInt(PIECES.size()));
    return switch (chance.nextInt(4)) {
      // no two are of one length: a file's time is coarse, and its size tells them apart
      case 0 -> text.replace(piece, piece + "x".repeat(1 + PIECES.indexOf(piece)));
      case 1 -> text.replace(piece, "");
      default -> text;
    };
  }

  private String address(String path) {
    return Conversation.address(walls.resolve(path));
  }

  @Test
  void whatIsShownInTheEndIsWhatAServerShowsThatHasSeenNothing() throws IOException {
    for (int i = 0; i < SESSIONS; i++) {
      if (chance.nextInt(3) == 0) {
        outside();
      }
      session(i);
    }
    // else nothing was tried
    assertThat(early).isGreaterThan(SESSIONS / 4);
  }

  /** Somebody changes files while no server is there. */
  private void outside() throws IOException {
    String path = PATHS.get(chance.nextInt(PATHS.size()));
    switch (chance.nextInt(4)) {
      case 0 -> Files.deleteIfExists(walls.resolve(SmallCatalog.PATH));
      case 1 -> Conversation.write(walls, SETTINGS, "severity.unused = off\n");
      case 2 -> Files.deleteIfExists(walls.resolve(SETTINGS));
      default -> Conversation.write(walls, path, any(path));
    }
  }

  private void session(int number) throws IOException {
    Map<String, String> open = new LinkedHashMap<>();
    HeldRules rules = new HeldRules();
    try (Conversation talk = talks.held(new ClientCapabilities(), rules)) {
      opened(talk, PATHS.get(chance.nextInt(PATHS.size())), open);
      EarlierTalks.hearAll(talk, rules);
      early += talk.heard.diagnostics.isEmpty() ? 0 : 1;
      rules.letGo();
      for (int step = 0; step < STEPS; step++) {
        String path = PATHS.get(chance.nextInt(PATHS.size()));
        if (!open.containsKey(path)) {
          opened(talk, path, open);
        } else {
          edited(talk, path, open);
        }
        if (chance.nextBoolean()) {
          EarlierTalks.settle(talk);
        }
      }
      assertThat(EarlierTalks.shown(talk)).as("session %d", number).isEqualTo(cold(open));
    }
  }

  private void opened(Conversation talk, String path, Map<String, String> open) throws IOException {
    Path file = walls.resolve(path);
    // some editors bring back what was never saved
    String text = Files.exists(file) && chance.nextInt(8) > 0 ? Files.readString(file) : any(path);
    open.put(path, text);
    talk.open(address(path), text);
  }

  private void edited(Conversation talk, String path, Map<String, String> open) {
    switch (chance.nextInt(3)) {
      case 0 -> {
        open.remove(path);
        talk.closeDocument(address(path));
      }
      case 1 -> {
        Conversation.write(walls, path, open.get(path));
        talk.server
            .getTextDocumentService()
            .didSave(new DidSaveTextDocumentParams(new TextDocumentIdentifier(address(path))));
      }
      default -> {
        open.put(path, any(path));
        talk.replace(address(path), open.get(path));
      }
    }
  }

  private Map<String, List<Diagnostic>> cold(Map<String, String> open) {
    try (Conversation talk = talks.cold(new ClientCapabilities())) {
      new ArrayList<>(open.entrySet())
          .forEach(each -> talk.open(address(each.getKey()), each.getValue()));
      return EarlierTalks.shown(talk);
    }
  }
}
