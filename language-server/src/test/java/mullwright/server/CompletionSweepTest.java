package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.syntax.LineTable;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is offered everywhere in the walls of the examples. */
class CompletionSweepTest extends Sweep {
  private static final Set<TokenKind> WORDS =
      EnumSet.of(
          TokenKind.KEYWORD,
          TokenKind.NAME,
          TokenKind.REFERENCE,
          TokenKind.PROPERTY,
          TokenKind.CLAUSE);

  /** Names that a text makes up, which nobody can guess. */
  private static boolean isNew(Place token, String text) {
    int line = text.lastIndexOf('\n', token.start()) + 1;
    String before = text.substring(line, token.start()).strip();
    return before.matches("(revision|wall|face|floors?|row|lines|opening \\w+|wind)( .*|)")
        && token.kind() != TokenKind.CLAUSE
        && !before.matches("row.* (above|below) .*|wind.* from .*|opening.* (bays|from|to) .*")
        && !List.of("field", "edge").contains(token.words());
  }

  private CompletionList offered(String address, Position at) {
    return await(
            talk.server
                .getTextDocumentService()
                .completion(new CompletionParams(new TextDocumentIdentifier(address), at)))
        .getRight();
  }

  /** At every column of one wall, and at the end of every word of the others. */
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY})
  void everyColumnCanBeCompletedAndEachWordIsOffered(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    Map<Integer, Place> ends = new LinkedHashMap<>();
    tokens(text).forEach(token -> ends.put(token.end(), token));
    for (int offset = 0; offset <= text.length(); offset++) {
      if (!wall.equals(FERRY) && !ends.containsKey(offset)) {
        continue;
      }
      Position at = position(text, offset);
      CompletionList list = offered(address, at);
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
      if (token != null && WORDS.contains(token.kind()) && !isNew(token, text)) {
        // a row of one floor only goes by its name alone
        String alone = token.words().replaceFirst("^.*\\.", "");
        // and a clause of two words is offered whole
        boolean offered =
            labels.contains(token.words())
                || labels.contains(alone)
                || labels.stream().anyMatch(label -> label.startsWith(token.words() + " "));
        if (!offered) {
          wrong.add("“" + token.words() + "” is not offered at " + where(text, offset));
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
      CompletionList list = offered(address, new Position(line + 1, 0));
      for (CompletionItem item : list.getItems()) {
        String written = item.getTextEditText() == null ? item.getLabel() : item.getTextEditText();
        String whole = expanded(written);
        String now = longer.substring(0, end + 1) + whole + longer.substring(end + 1);
        taken++;
        if (item.getTextEditText() != null && problems(now) > 0) {
          wrong.add("“" + whole + "” after line " + (line + 1) + " does not read");
        }
      }
    }
    assertThat(new LinkedHashSet<>(wrong)).isEmpty();
    assertThat(taken).isGreaterThan(350);
  }

  /** What a statement may trip that was taken as it is offered. */
  private static final Set<String> SLIPS =
      Set.of(
          "unreadable",
          "unknown-name",
          "unknown-property",
          "bad-value",
          "wrong-unit",
          "out-of-order",
          "out-of-place",
          "count-mismatch",
          "duplicate",
          "hole-clash",
          "isolation-missing",
          "piece-impossible");

  /** At the end of each block, what is offered goes on the wall there is. */
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, FERRY})
  void noStatementThatIsOfferedContradictsTheWall(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    talk.heard.next(address);
    int taken = 0;
    for (String block : List.of("grid", "members", "anchors", "lites", "criteria")) {
      int end = text.indexOf("\n  }", text.indexOf("\n  " + block + " {"));
      String before = text.substring(0, end) + "\n    ";
      talk.replace(address, before + text.substring(end));
      CompletionList list =
          await(
                  talk.server
                      .getTextDocumentService()
                      .completion(
                          new CompletionParams(
                              new TextDocumentIdentifier(address),
                              position(before, before.length()))))
              .getRight();
      for (CompletionItem item : list.getItems()) {
        String written = item.getTextEditText() == null ? item.getLabel() : item.getTextEditText();
        String whole = expanded(written);
        if (item.getLabel().equals("joint")) {
          // takes a bay away, which others may name
          continue;
        }
        int version = talk.replace(address, before + whole + text.substring(end));
        taken++;
        talk.heard.of(address, version).getDiagnostics().stream()
            .filter(found -> SLIPS.contains(found.getCode().getLeft()))
            .forEach(found -> wrong.add("“" + whole + "”: " + found.getMessage().getLeft()));
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(taken).isGreaterThan(20);
  }

  /** A snippet as it stands when nothing in it is changed. */
  private static String expanded(String snippet) {
    return snippet
        .replaceAll("\\$\\{\\d+\\|([^,|]*)[^}]*\\}", "$1")
        .replaceAll("\\$\\{\\d+:([^}]*)\\}", "$1")
        .replaceAll("\\$\\{?\\d+\\}?", "")
        .replaceAll("\\\\(.)", "$1");
  }

  /**
   * At the end of every word: what is offered in its place and begins with that very word, or is a
   * clause in the place of a clause that is named by a word too, leaves a text that reads.
   */
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, FERRY, "catalog/captured.wall"})
  void noOfferWritesTwiceWhatStandsThere(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    int taken = 0;
    for (Place token : tokens(text)) {
      if (!REWRITTEN.contains(token.kind())) {
        continue;
      }
      CompletionList list = offered(address, position(text, token.end()));
      for (CompletionItem item : list.getItems()) {
        boolean same = (item.getLabel() + " ").startsWith(token.words() + " ");
        boolean alike = NAMED_BY.contains(token.words()) && isNamedBy(item.getLabel());
        if (!same && !alike) {
          continue;
        }
        taken++;
        String now = taken(text, token, item);
        if (problems(now) > 0) {
          wrong.add("“" + item.getLabel() + "” at " + where(text, token.end()) + " does not read");
        }
        if (item.getLabel().equals(token.words()) && !now.equals(text)) {
          wrong.add(
              "“" + item.getLabel() + "” at " + where(text, token.end()) + " changes the text");
        }
      }
    }
    assertThat(new LinkedHashSet<>(wrong)).isEmpty();
    assertThat(taken).isGreaterThan(50);
  }

  private static final Set<TokenKind> REWRITTEN =
      EnumSet.of(
          TokenKind.KEYWORD,
          TokenKind.PROPERTY,
          TokenKind.CLAUSE,
          TokenKind.REMARK,
          TokenKind.JOINER,
          TokenKind.UNIT);

  /** Clauses that are followed by the name of a part. */
  private static final Set<String> NAMED_BY = Set.of("isolated", "spread", "bedded", "part");

  private static boolean isNamedBy(String label) {
    return NAMED_BY.contains(label.split(" ")[0]);
  }

  /** The text after an offer took the place of a whole word. */
  private static String taken(String text, Place word, CompletionItem item) {
    String written = item.getTextEditText() == null ? item.getLabel() : item.getTextEditText();
    StringBuilder now = new StringBuilder(text);
    if (item.getAdditionalTextEdits() != null) {
      for (TextEdit edit : item.getAdditionalTextEdits()) {
        assertThat(offset(text, edit.getRange().getStart())).isGreaterThanOrEqualTo(word.end());
        now.replace(
            offset(text, edit.getRange().getStart()),
            offset(text, edit.getRange().getEnd()),
            edit.getNewText());
      }
    }
    return now.replace(word.start(), word.end(), written).toString();
  }
}
