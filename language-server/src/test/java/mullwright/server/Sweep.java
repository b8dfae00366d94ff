package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import mullwright.editor.Tools;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Everything an editor may ask, asked everywhere in the walls of the examples. */
abstract class Sweep {
  static final String LIBRARY = "library-corner/reading-room.wall";
  static final String TOWER = "tower/north.wall";
  static final String FERRY = "ferry-terminal/east.wall";

  @TempDir Path folder;

  Conversation talk;

  /** The texts as the editor has them, by address. */
  final Map<String, String> texts = new TreeMap<>();

  final List<String> wrong = new ArrayList<>();

  @BeforeEach
  void copyTheExamples() {
    Path examples = Tools.project().resolve("examples");
    try (Stream<Path> all = Files.walk(examples)) {
      for (Path file : all.filter(it -> it.toString().endsWith(".wall")).toList()) {
        Conversation.write(folder, examples.relativize(file).toString(), Files.readString(file));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    JsonObject able = AbleClient.json();
    able.getAsJsonObject("textDocument").remove("diagnostic");
    able.getAsJsonObject("textDocument")
        .getAsJsonObject("codeAction")
        .addProperty("disabledSupport", true);
    talk = Conversation.greeted("sweep", folder, AbleClient.capabilities(able));
  }

  @AfterEach
  void end() {
    assertThat(talk.heard.logged).isEmpty();
    talk.close();
  }

  String open(String path) {
    String address = Conversation.address(folder.resolve(path));
    String text = read(address);
    texts.put(address, text);
    talk.open(address, text);
    return address;
  }

  static String read(String address) {
    try {
      return Files.readString(Path.of(URI.create(address)));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  record Place(int start, int end, TokenKind kind, String words) {}

  static List<Place> tokens(String text) {
    ParsedFile file = ParsedFile.parse(text);
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < file.segments().size(); i++) {
      for (Token token : file.tokens(i)) {
        int start = file.segmentStart(i) + token.range().start();
        int end = file.segmentStart(i) + token.range().end();
        places.add(new Place(start, end, token.kind(), text.substring(start, end)));
      }
    }
    return places;
  }

  static int problems(String text) {
    int problems = 0;
    for (Segment segment : ParsedFile.parse(text).segments()) {
      problems += segment.problems().size();
    }
    return problems;
  }

  static int offset(String text, Position position) {
    return LineTable.of(text).offset(position.getLine(), position.getCharacter());
  }

  static Position position(String text, int offset) {
    return ProtocolTalk.position(text, offset);
  }

  static String where(String text, int offset) {
    Position at = position(text, offset);
    LineTable lines = LineTable.of(text);
    String line = text.substring(lines.start(at.getLine()), lines.end(at.getLine()));
    return (at.getLine() + 1) + ":" + at.getCharacter() + " in “" + line.strip() + "”";
  }

  Map<String, List<TextEdit>> edits(WorkspaceEdit edit) {
    Map<String, List<TextEdit>> edits = new TreeMap<>();
    edit.getDocumentChanges().stream()
        .filter(Either::isLeft)
        .map(Either::getLeft)
        .forEach(
            each ->
                edits.put(
                    each.getTextDocument().getUri(),
                    each.getEdits().stream().map(Either::getLeft).toList()));
    return edits;
  }

  /** The texts after an edit; the editor's own stay as they are. */
  Map<String, String> after(WorkspaceEdit edit) {
    Map<String, String> after = new TreeMap<>();
    edits(edit)
        .forEach(
            (address, edits) ->
                after.put(
                    address,
                    WallTalk.apply(
                        texts.containsKey(address) ? texts.get(address) : readOrNothing(address),
                        edits)));
    return after;
  }

  static String readOrNothing(String address) {
    return Files.exists(Path.of(URI.create(address))) ? read(address) : "";
  }
}
