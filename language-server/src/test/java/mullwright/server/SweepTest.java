package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import mullwright.editor.Tools;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DocumentLink;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything an editor may ask, asked everywhere in the walls of the examples. */
class SweepTest {
  private static final String LIBRARY = "library-corner/reading-room.wall";
  private static final String TOWER = "tower/north.wall";
  private static final String FERRY = "ferry-terminal/east.wall";

  @TempDir Path folder;

  private Conversation talk;

  /** The texts as the editor has them, by address. */
  private final Map<String, String> texts = new TreeMap<>();

  private final List<String> wrong = new ArrayList<>();

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

  private String open(String path) {
    String address = Conversation.address(folder.resolve(path));
    String text = read(address);
    texts.put(address, text);
    talk.open(address, text);
    return address;
  }

  private static String read(String address) {
    try {
      return Files.readString(Path.of(URI.create(address)));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private record Place(int start, int end, TokenKind kind, String words) {}

  private static List<Place> tokens(String text) {
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

  private static int problems(String text) {
    int problems = 0;
    for (Segment segment : ParsedFile.parse(text).segments()) {
      problems += segment.problems().size();
    }
    return problems;
  }

  private static int offset(String text, Position position) {
    return LineTable.of(text).offset(position.getLine(), position.getCharacter());
  }

  private static Position position(String text, int offset) {
    return ProtocolTalk.position(text, offset);
  }

  private static String where(String text, int offset) {
    Position at = position(text, offset);
    LineTable lines = LineTable.of(text);
    String line = text.substring(lines.start(at.getLine()), lines.end(at.getLine()));
    return (at.getLine() + 1) + ":" + at.getCharacter() + " in “" + line.strip() + "”";
  }

  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY, "first-wall/lobby.wall"})
  void everyTokenCanBePointedAt(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    for (Place token : tokens(text)) {
      int middle = (token.start + token.end) / 2;
      Position at = position(text, middle);
      Hover hover = await(talk.server.getTextDocumentService().hover(new HoverParams(which, at)));
      if (hover == null) {
        if (token.kind != TokenKind.COMMENT) {
          wrong.add("no hover at " + where(text, middle) + " " + token);
        }
      } else {
        int start = offset(text, hover.getRange().getStart());
        int end = offset(text, hover.getRange().getEnd());
        if (start > middle || end < middle) {
          wrong.add("hover elsewhere at " + where(text, middle));
        }
        if (hover.getContents().getRight().getValue().isBlank()) {
          wrong.add("empty hover at " + where(text, middle));
        }
      }
      SelectionRange range =
          await(
                  talk.server
                      .getTextDocumentService()
                      .selectionRange(new SelectionRangeParams(which, List.of(at))))
              .get(0);
      int from = offset(text, range.getRange().getStart());
      int to = offset(text, range.getRange().getEnd());
      if (from > middle || to < middle) {
        wrong.add("selection elsewhere at " + where(text, middle));
      }
      for (SelectionRange outer = range.getParent(); outer != null; outer = outer.getParent()) {
        int widerFrom = offset(text, outer.getRange().getStart());
        int widerTo = offset(text, outer.getRange().getEnd());
        if (widerFrom > from || widerTo < to || widerFrom == from && widerTo == to) {
          wrong.add("selection does not grow at " + where(text, middle));
        }
        from = widerFrom;
        to = widerTo;
      }
      if (from != 0 || to != text.length()) {
        wrong.add("selection does not end with the file at " + where(text, middle));
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static final Set<TokenKind> WORDS =
      EnumSet.of(
          TokenKind.KEYWORD,
          TokenKind.NAME,
          TokenKind.REFERENCE,
          TokenKind.PROPERTY,
          TokenKind.CLAUSE);

  /** Names that a text makes up, which nobody can guess. */
  private static boolean isNew(Place token, String text) {
    int line = text.lastIndexOf('\n', token.start) + 1;
    String before = text.substring(line, token.start).strip();
    return before.matches("(revision|wall|face|floors?|row|lines|opening \\w+|wind)( .*|)")
        && token.kind != TokenKind.CLAUSE
        && !before.matches("row.* (above|below) .*|wind.* from .*|opening.* (bays|from|to) .*")
        && !List.of("field", "edge").contains(token.words);
  }

  /** At every column of one wall, and at the end of every word of the others. */
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY})
  void everyColumnCanBeCompletedAndEachWordIsOffered(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    Map<Integer, Place> ends = new LinkedHashMap<>();
    tokens(text).forEach(token -> ends.put(token.end, token));
    for (int offset = 0; offset <= text.length(); offset++) {
      if (!wall.equals(FERRY) && !ends.containsKey(offset)) {
        continue;
      }
      Position at = position(text, offset);
      CompletionList list =
          await(
                  talk.server
                      .getTextDocumentService()
                      .completion(new CompletionParams(new TextDocumentIdentifier(address), at)))
              .getRight();
      Set<String> labels = new HashSet<>();
      Set<String> sorts = new HashSet<>();
      for (CompletionItem item : list.getItems()) {
        if (!labels.add(item.getLabel())) {
          wrong.add("twice “" + item.getLabel() + "” at " + where(text, offset));
        }
        sorts.add(item.getSortText());
        if (item.getKind() == null || item.getLabel().isBlank()) {
          wrong.add("no kind of " + item.getLabel() + " at " + where(text, offset));
        }
      }
      if (sorts.size() != list.getItems().size()) {
        wrong.add("not in order at " + where(text, offset));
      }
      Range replace =
          list.getItemDefaults().getEditRange().isRight()
              ? list.getItemDefaults().getEditRange().getRight().getReplace()
              : list.getItemDefaults().getEditRange().getLeft();
      int start = offset(text, replace.getStart());
      int end = offset(text, replace.getEnd());
      if (start > offset
          || end < offset
          || replace.getStart().getLine() != replace.getEnd().getLine()) {
        wrong.add("range elsewhere at " + where(text, offset));
      }
      Place token = ends.get(offset);
      if (token != null && WORDS.contains(token.kind) && !isNew(token, text)) {
        // a row of one floor only goes by its name alone
        String alone = token.words.replaceFirst("^.*\\.", "");
        // and a clause of two words is offered whole
        boolean offered =
            labels.contains(token.words)
                || labels.contains(alone)
                || labels.stream().anyMatch(label -> label.startsWith(token.words + " "));
        if (!offered) {
          wrong.add("“" + token.words + "” is not offered at " + where(text, offset));
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  /**
   * On a new line after each line of a wall, every offer that is taken leaves a text that reads.
   */
  @Test
  void everyStatementThatIsOfferedReads() {
    String address = open(FERRY);
    String text = texts.get(address);
    int taken = 0;
    for (int line = 0; line < LineTable.of(text).count() - 1; line++) {
      int end = LineTable.of(text).end(line);
      String longer = text.substring(0, end) + "\n" + text.substring(end);
      talk.replace(address, longer);
      CompletionList list =
          await(
                  talk.server
                      .getTextDocumentService()
                      .completion(
                          new CompletionParams(
                              new TextDocumentIdentifier(address), new Position(line + 1, 0))))
              .getRight();
      for (CompletionItem item : list.getItems()) {
        String written = item.getTextEditText() == null ? item.getLabel() : item.getTextEditText();
        String whole =
            written
                .replaceAll("\\$\\{\\d+\\|([^,|]*)[^}]*\\}", "$1")
                .replaceAll("\\$\\{\\d+:([^}]*)\\}", "$1")
                .replaceAll("\\$\\{?\\d+\\}?", "")
                .replaceAll("\\\\(.)", "$1");
        String now = longer.substring(0, end + 1) + whole + longer.substring(end + 1);
        taken++;
        if (item.getTextEditText() != null && problems(now) > 0) {
          wrong.add("“" + whole + "” after line " + (line + 1) + " does not read");
        }
      }
    }
    assertThat(new LinkedHashSet<>(wrong)).isEmpty();
    assertThat(taken).isGreaterThan(400);
  }

  private Map<String, List<TextEdit>> edits(WorkspaceEdit edit) {
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
  private Map<String, String> after(WorkspaceEdit edit) {
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

  private static String readOrNothing(String address) {
    return Files.exists(Path.of(URI.create(address))) ? read(address) : "";
  }

  private void take(Map<String, String> after) {
    after.forEach(
        (address, text) -> {
          if (texts.containsKey(address)) {
            talk.replace(address, text);
          } else {
            talk.open(address, text);
          }
          texts.put(address, text);
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY})
  void everyNameCanBeRenamedAndBack(String wall) {
    String address = open(wall);
    Map<String, String> before = new TreeMap<>(texts);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    String text = texts.get(address);
    Set<String> done = new LinkedHashSet<>();
    for (Place token : tokens(text)) {
      Position at = position(text, token.start);
      try {
        var answer =
            await(
                talk.server
                    .getTextDocumentService()
                    .prepareRename(new PrepareRenameParams(which, at)));
        if (answer == null) {
          continue;
        }
        PrepareRenameResult name = answer.getSecond();
        if (!done.add(name.getPlaceholder() + "/" + token.kind)) {
          continue;
        }
        String old = name.getPlaceholder();
        int start = offset(text, name.getRange().getStart());
        if (!text.startsWith(old, start)) {
          wrong.add("prepare is elsewhere at " + where(text, token.start));
        }
        Map<String, String> after =
            after(
                await(
                    talk.server
                        .getTextDocumentService()
                        .rename(new RenameParams(which, at, "Zz-9"))));
        for (String path : after.keySet()) {
          before.putIfAbsent(path, texts.containsKey(path) ? texts.get(path) : read(path));
        }
        take(after);
        String now = texts.get(address);
        int there = now.indexOf("Zz-9");
        Map<String, String> back =
            after(
                await(
                    talk.server
                        .getTextDocumentService()
                        .rename(new RenameParams(which, position(now, there), old))));
        take(back);
        before.forEach(
            (path, was) -> {
              if (!texts.getOrDefault(path, was).equals(was)) {
                wrong.add("not the same after “" + old + "” there and back: " + path);
              }
            });
        take(before);
      } catch (java.util.concurrent.CompletionException refusal) {
        // names made of a range have no place of their own
        if (!refusal.getMessage().matches(".*(is made by the pattern|is an end of a range).*")) {
          wrong.add(where(text, token.start) + ": " + refusal.getMessage());
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(done.size()).isGreaterThan(20);
  }

  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY})
  void everyActionLeavesATextThatReads(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    Set<String> done = new LinkedHashSet<>();
    for (Place token : tokens(text)) {
      Position at = position(text, token.start);
      List<CodeAction> offers =
          await(
                  talk.server
                      .getTextDocumentService()
                      .codeAction(
                          new CodeActionParams(
                              which, new Range(at, at), new CodeActionContext(List.of()))))
              .stream()
              .map(Either::getRight)
              .toList();
      Set<String> titles = new HashSet<>();
      for (CodeAction offer : offers) {
        if (!titles.add(offer.getTitle())) {
          wrong.add("twice “" + offer.getTitle() + "” at " + where(text, token.start));
        }
        if (offer.getDisabled() != null
            || offer.getCommand() != null
            || !done.add(offer.getTitle())) {
          continue;
        }
        try {
          CodeAction picked = await(talk.server.getTextDocumentService().resolveCodeAction(offer));
          if (picked.getEdit() == null) {
            wrong.add("no edit of “" + offer.getTitle() + "” at " + where(text, token.start));
            continue;
          }
          after(picked.getEdit())
              .forEach(
                  (path, now) -> {
                    if (problems(now) > 0) {
                      wrong.add(
                          "“"
                              + offer.getTitle()
                              + "” at "
                              + where(text, token.start)
                              + " does not read");
                    }
                  });
        } catch (java.util.concurrent.CompletionException refusal) {
          wrong.add("“" + offer.getTitle() + "”: " + refusal.getMessage());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY, "catalog/captured.wall"})
  void whatIsToldOfTheWholeFileIsInOrder(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    List<DocumentLink> links =
        await(talk.server.getTextDocumentService().documentLink(new DocumentLinkParams(which)));
    for (DocumentLink link : links) {
      if (!Files.exists(Path.of(URI.create(link.getTarget())))) {
        wrong.add("a link to nowhere: " + link.getTarget());
      }
    }
    for (FoldingRange fold :
        await(
            talk.server
                .getTextDocumentService()
                .foldingRange(new FoldingRangeRequestParams(which)))) {
      if (fold.getEndLine() <= fold.getStartLine()) {
        wrong.add("nothing folds at line " + fold.getStartLine());
      }
    }
    for (var symbol :
        await(
            talk.server.getTextDocumentService().documentSymbol(new DocumentSymbolParams(which)))) {
      nested(symbol.getRight(), text);
    }
    assertThat(wrong).isEmpty();
  }

  private void nested(DocumentSymbol symbol, String text) {
    int start = offset(text, symbol.getRange().getStart());
    int end = offset(text, symbol.getRange().getEnd());
    int from = offset(text, symbol.getSelectionRange().getStart());
    int to = offset(text, symbol.getSelectionRange().getEnd());
    if (from < start || to > end || symbol.getName().isBlank()) {
      wrong.add("symbol " + symbol.getName() + " is not in its range");
    }
    if (symbol.getChildren() != null) {
      for (DocumentSymbol child : symbol.getChildren()) {
        if (offset(text, child.getRange().getStart()) < start
            || offset(text, child.getRange().getEnd()) > end) {
          wrong.add(child.getName() + " is not in " + symbol.getName());
        }
        nested(child, text);
      }
    }
  }
}
