package mullwright.server.completion;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.model.Role;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;
import mullwright.server.hover.Numbers;
import mullwright.server.hover.Words;
import mullwright.syntax.Block;
import mullwright.syntax.BlockKind;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.CompletionItemKind;

/**
 * What may be written at a place, best first.
 *
 * @param range what is being written there, counted from the file's start; an offer takes its place
 * @param word the same with the rest of the word behind the cursor
 */
public record Offers(TextRange range, TextRange word, List<Offer> all) {
  /** What {@code units} takes. */
  static final List<String> UNITS = List.of("inches", "feet", "millimetres", "metres");

  /** What {@code opening} takes. */
  static final List<String> OPENINGS = List.of("door", "void", "louvre", "vent");

  /** What a file says once. */
  private static final Set<StatementKind> ONCE =
      EnumSet.of(StatementKind.UNITS, StatementKind.PROJECT_BLOCK);

  private static final List<String> REMARKS = List.of("note", "verify", "hold");

  /** The offers at a cursor. */
  public static Offers at(Cursor cursor) {
    LineContext line = LineContext.of(cursor);
    Set<Offer> offers = new LinkedHashSet<>();
    if (!line.closed()) {
      new Gathering(cursor, line, new Names(cursor), offers).gather();
    }
    int start = line.prefix().start();
    TextRange word = new TextRange(start, Math.max(line.prefix().end(), line.wordEnd()));
    List<Offer> all = List.copyOf(offers);
    if (word.length() > 0 && !line.inString()) {
      String replaced = cursor.file().text().substring(word.start(), word.end());
      all =
          Following.of(cursor, word.end())
              .map(it -> it.fit(replaced, List.copyOf(offers)))
              .orElse(all);
    }
    return new Offers(line.prefix(), word, all);
  }

  private record Gathering(Cursor cursor, LineContext line, Names names, Set<Offer> offers) {
    void gather() {
      if (line.inString()) {
        if (line.kind() == StatementKind.USE) {
          offers.addAll(Paths.at(cursor));
        }
      } else if (line.atStart()) {
        statements();
      } else if (line.kind() == StatementKind.PROPERTY) {
        property();
      } else if (!line.rest().isEmpty()) {
        offers.add(
            Offer.of(
                line.rest(),
                CompletionItemKind.Keyword,
                line.clause().map(ClauseWord::meaning).orElse("")));
      } else if (line.wantsOperand()) {
        operand();
      } else {
        after();
      }
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
      boolean lite = line.kind() == StatementKind.VISION || line.kind() == StatementKind.SPANDREL;
      return lite && line.clause().isEmpty() && words() == 1;
    }

    private void statements() {
      Numbers numbers = Numbers.of(cursor.file());
      Snippets snippets = new Snippets(names, numbers);
      for (StatementKind kind : StatementKind.values()) {
        boolean stands = kind.standsIn().contains(cursor.block()) && !kind.spelling().isEmpty();
        if (stands && !(ONCE.contains(kind) && isInFile(kind))) {
          offers.add(
              Offer.of(
                      kind.spelling(),
                      CompletionItemKind.Keyword,
                      kind.meaning(),
                      new Topic("statement", "", kind.spelling()))
                  .as(kind == StatementKind.USE ? used() : snippets.of(kind)));
        }
      }
      if (cursor.block() == BlockKind.CATALOG) {
        for (PartKind kind : PartKind.values()) {
          offers.add(
              Offer.of(
                      kind.spelling(),
                      CompletionItemKind.Keyword,
                      "a part of the catalog",
                      new Topic("part-kind", "", kind.spelling()))
                  .as(kind.spelling() + " ${1:name} {\n\t$0\n}"));
        }
      }
      List<Statement> beside = beside();
      PropertySnippet stops = new PropertySnippet(names, snippets, numbers.first(), beside);
      Words.schema(cursor)
          .ifPresent(
              schema ->
                  schema.properties().stream()
                      .filter(property -> property.repeats() || !isGiven(property, beside))
                      .forEach(
                          property ->
                              offers.add(
                                  Offer.of(
                                          property.word(),
                                          CompletionItemKind.Property,
                                          property.pattern(),
                                          new Topic("property", schema.kind(), property.word()))
                                      .as(stops.of(property)))));
    }

    private String used() {
      List<String> paths = Paths.at(cursor).stream().map(Offer::text).toList();
      return new Stops().text("use \"").choice(paths, "path").text("\"").end().toString();
    }

    /** True if the file has such a statement besides, in its blocks or beside them. */
    private boolean isInFile(StatementKind kind) {
      for (int i = 0; i < cursor.file().segments().size(); i++) {
        for (Statement statement : cursor.file().segments().get(i).statements()) {
          List<Statement> all = new ArrayList<>(List.of(statement));
          statement.block().ifPresent(block -> all.addAll(block.statements()));
          boolean here = i == cursor.segment();
          if (all.stream().anyMatch(it -> it.kind() == kind && !(here && isAtCursor(it)))) {
            return true;
          }
        }
      }
      return false;
    }

    private boolean isAtCursor(Statement statement) {
      return statement.keyword().range().touches(cursor.offset());
    }

    /** The other statements of the block, the one at the cursor left out. */
    private List<Statement> beside() {
      for (int i = cursor.enclosing().size() - 1; i >= 0; i--) {
        Optional<Block> block = cursor.enclosing().get(i).block();
        if (block.isPresent() && block.get().range().touches(cursor.offset())) {
          return block.get().statements().stream()
              .filter(statement -> !isAtCursor(statement))
              .toList();
        }
      }
      return List.of();
    }

    private static boolean isGiven(PartSchema.Property property, List<Statement> beside) {
      return beside.stream().anyMatch(it -> it.keyword().text().equals(property.word()));
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

    private void operand() {
      if (line.clause().isPresent()) {
        clauseOperand(line.clause().get());
      } else {
        argument();
      }
      line.rangeFrom().ifPresent(this::goOn);
    }

    /** The far end of a range comes after its near end; {@code all} is none. */
    private void goOn(String first) {
      List<Offer> all = new ArrayList<>(offers);
      for (int i = 0; i < all.size(); i++) {
        if (all.get(i).text().equals(first)) {
          offers.clear();
          offers.addAll(all.subList(i + 1, all.size()));
          return;
        }
      }
    }

    private void clauseOperand(ClauseWord clause) {
      switch (clause) {
        case AT, FROM -> {
          Optional<String> from = line.extentFrom();
          if (from.isPresent()) {
            offers.addAll(names.above(from.get()));
          } else {
            offers.addAll(names.floors());
            offers.addAll(names.rows());
          }
          if (line.kind() == StatementKind.LINE) {
            offers.addAll(names.lines());
          }
          offers.addAll(names.lets());
          if (line.kind() == StatementKind.DEAD_LOAD || line.kind() == StatementKind.WIND_LOAD) {
            offers.add(
                Offer.of(
                    "floor below splices",
                    CompletionItemKind.Keyword,
                    "the floor under each splice"));
          }
        }
        case BAYS, LINES, THROUGH, ONLY, SKIP -> lines();
        case ROWS -> offers.addAll(names.rows());
        case AS -> {
          boolean standing = line.kind() != StatementKind.HORIZONTAL;
          for (Role role : Role.values()) {
            if (role.vertical() == standing) {
              offers.add(
                  Offer.of(
                      role.spelling(),
                      CompletionItemKind.EnumMember,
                      "role",
                      new Topic("role", "", role.spelling())));
            }
          }
          offers.addAll(names.profiles(standing));
        }
        case WITH -> offers.addAll(names.parts(List.of(PartKind.REINFORCEMENT)));
        case PART ->
            offers.addAll(
                line.kind() == StatementKind.CLIP
                    ? names.parts(List.of(PartKind.CLIP))
                    : line.kind() == StatementKind.END_DAM
                        ? names.parts(List.of(PartKind.ZONE_DAM))
                        : names.anchors(line.kind()));
        case SLEEVE -> offers.addAll(names.parts(List.of(PartKind.SLEEVE)));
        case LIKE -> offers.addAll(names.walls());
        case ISOLATED_BY, BEDDED_ON -> offers.addAll(names.parts(List.of(PartKind.ISOLATION)));
        case SPREAD_BY -> offers.addAll(names.parts(List.of(PartKind.SPREAD_PLATE)));
        case BOLTED ->
            offers.addAll(
                line.words().isEmpty() ? names.bolts() : names.parts(List.of(PartKind.FASTENER)));
        case START -> {
          offers.add(Offer.of("left", CompletionItemKind.EnumMember, "side"));
          offers.add(Offer.of("right", CompletionItemKind.EnumMember, "side"));
        }
        default -> offers.addAll(names.lets());
      }
    }

    private void lines() {
      offers.add(Offer.of("all", CompletionItemKind.Keyword, "all that pass the place"));
      offers.addAll(names.lines());
    }

    private void argument() {
      switch (line.kind()) {
        case VERTICAL,
            SPLICE,
            REINFORCE,
            BRACKET,
            END_DAM,
            DEAD_LOAD,
            WIND_LOAD,
            CLIP,
            LADDER,
            STICK ->
            lines();
        case JOINT -> offers.addAll(names.lines());
        case CORNER -> offers.addAll(names.linesBetween());
        case HORIZONTAL -> {
          offers.add(Offer.of("all", CompletionItemKind.Keyword, "all rows"));
          offers.addAll(names.rows());
        }
        case VISION, SPANDREL -> offers.addAll(names.glass(line.kind() == StatementKind.VISION));
        case LINES_STATEMENT, LINE -> next(names.lines(), "line");
        case FLOOR, FLOORS -> next(names.floors(), "floor");
        case ROW -> next(names.rows(), "row");
        case SLAB_STATEMENT ->
            offers.addAll(line.words().isEmpty() ? names.lets() : names.floors());
        case OPENING -> {
          for (String kind : OPENINGS) {
            offers.add(Offer.of(kind, CompletionItemKind.EnumMember, "kind of opening"));
          }
        }
        case UNITS -> {
          for (String unit : UNITS) {
            offers.add(Offer.of(unit, CompletionItemKind.Unit, "unit of bare numbers"));
          }
        }
        case LET -> offers.addAll(names.lets());
        default -> {
          // a new name, which nobody can guess
        }
      }
    }

    /** A new name nobody can guess, unless the names before it count. */
    private void next(List<Offer> before, String what) {
      NextName.after(before.stream().map(Offer::text).toList())
          .ifPresent(
              name -> offers.add(Offer.of(name, CompletionItemKind.Value, "next free " + what)));
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
          offers.add(
              Offer.of(remark, CompletionItemKind.Keyword, "a remark").as(remark + " \"$0\""));
        }
      }
    }
  }
}
