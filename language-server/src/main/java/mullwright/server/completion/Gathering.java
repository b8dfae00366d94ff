package mullwright.server.completion;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;
import mullwright.server.hover.Words;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.CompletionItemKind;

/** Gathers what may be written at a place, by what stands before it on the line. */
record Gathering(Cursor cursor, LineContext line, Names names, Set<Offer> offers) {
  private static final List<String> REMARKS = List.of("note", "verify", "hold");

  void gather() {
    if (line.inString()) {
      if (line.kind() == StatementKind.USE) {
        paths();
      }
    } else if (line.atStart()) {
      new StatementOffers(cursor, names, offers).gather();
    } else if (line.kind() == StatementKind.PROPERTY) {
      property();
    } else if (!line.rest().isEmpty()) {
      offers.add(
          Offer.of(
              line.rest(),
              CompletionItemKind.Keyword,
              line.clause().map(ClauseWord::meaning).orElse("")));
    } else if (line.wantsOperand()) {
      new OperandOffers(line, names, offers).gather();
    } else {
      after();
    }
  }

  /** What stands in the quotes of a use; each offer closes them unless a quote does already. */
  private void paths() {
    String mark = cursor.file().text().startsWith("\"", line.wordEnd()) ? "" : "\"";
    Paths.at(cursor).forEach(path -> offers.add(path.closedBy(mark)));
  }

  /** What may follow what is whole. */
  private void after() {
    if (line.kind() == StatementKind.OPENING && line.clause().isEmpty() && words() == 1) {
      String name = names.nextOpening();
      offers.add(Offer.of(name, CompletionItemKind.Value, "next free opening"));
      return;
    }
    Joining joining = Joining.of(line);
    if (!joining.due()) {
      if (line.kind() == StatementKind.SLAB_STATEMENT && !line.afterNumber()) {
        offers.addAll(names.floors());
      }
      units();
    }
    offers.addAll(joining.offers());
    if (!joining.due()) {
      if (isGlassAlone()) {
        offers.add(Offer.of("all", CompletionItemKind.Keyword, "all openings"));
      }
      clauses();
      int last = line.words().size() - 1;
      if (last >= 0 && line.words().get(last).equals("all")) {
        offers.add(Offer.of("except", CompletionItemKind.Keyword, "all but those that follow"));
      }
    }
  }

  private int words() {
    return line.words().size();
  }

  private boolean isGlassAlone() {
    return line.kind().form() == StatementKind.Form.GLASS
        && line.clause().isEmpty()
        && words() == 1;
  }

  /** What the patterns of the property have a place for: words, names of parts, units. */
  private void property() {
    Words.schema(cursor)
        .flatMap(schema -> schema.find(line.keyword()))
        .ifPresent(property -> offers.addAll(PropertyOffers.of(property, line, names)));
  }

  private void units(Kind kind) {
    for (Unit unit : Unit.of(kind)) {
      offers.add(PropertyOffers.unit(unit, kind));
    }
  }

  private void units() {
    if (line.afterNumber()) {
      units(Joining.kindOf(line));
    }
  }

  private void clauses() {
    Set<ClauseWord> open = EnumSet.noneOf(ClauseWord.class);
    open.addAll(line.kind().clauses());
    open.removeAll(line.given());
    open.remove(ClauseWord.LOADS);
    for (ClauseWord word : open) {
      offers.add(
          Offer.of(
              word.spelling(),
              CompletionItemKind.Keyword,
              word.meaning(),
              new Topic("clause", "", word.spelling())));
    }
    if (line.kind() != StatementKind.UNKNOWN) {
      for (String remark : REMARKS) {
        offers.add(Offer.of(remark, CompletionItemKind.Keyword, "a remark").as(remark + " \"$0\""));
      }
    }
  }
}
