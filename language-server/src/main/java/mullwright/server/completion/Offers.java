package mullwright.server.completion;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.model.Role;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;
import mullwright.server.hover.Numbers;
import mullwright.server.hover.Words;
import mullwright.syntax.BlockKind;
import mullwright.syntax.ClauseWord;
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

  /** What {@code wind} names most often; any other word is a zone too. */
  private static final List<String> ZONES = List.of("field", "edge");

  /** What {@code exposure} takes. */
  private static final List<String> EXPOSURES =
      List.of("outdoor", "sheltered", "coastal", "indoor");

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
        if (line.kind() == StatementKind.SLAB_STATEMENT && !line.afterNumber()) {
          offers.addAll(names.floors());
        }
        units();
        clauses();
        int last = line.words().size() - 1;
        if (last >= 0 && line.words().get(last).equals("all")) {
          offers.add(Offer.of("except", CompletionItemKind.Keyword, "all but those that follow"));
        }
      }
    }

    private void statements() {
      Numbers numbers = Numbers.of(cursor.file());
      Snippets snippets = new Snippets(names, numbers);
      for (StatementKind kind : StatementKind.values()) {
        if (kind.standsIn().contains(cursor.block()) && !kind.spelling().isEmpty()) {
          offers.add(
              Offer.of(
                      kind.spelling(),
                      CompletionItemKind.Keyword,
                      kind.meaning(),
                      new Topic("statement", "", kind.spelling()))
                  .as(snippets.of(kind)));
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
      PropertySnippet stops = new PropertySnippet(names, snippets, numbers.first());
      Words.schema(cursor)
          .ifPresent(
              schema ->
                  schema
                      .properties()
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

    /** What the patterns of the property have a place for: words, names of parts, units. */
    private void property() {
      Optional<PartSchema.Property> property =
          Words.schema(cursor).flatMap(schema -> schema.find(line.keyword()));
      if (property.isEmpty()) {
        return;
      }
      for (String pattern : property.get().patterns()) {
        for (String token : pattern.split("[\\[\\] ]+")) {
          pattern(token);
        }
      }
    }

    private void pattern(String token) {
      if (token.isEmpty()) {
        return;
      }
      if (!token.equals(token.toUpperCase(Locale.ROOT))) {
        for (String word : token.split("\\|")) {
          offers.add(Offer.of(word, CompletionItemKind.Keyword, line.keyword()));
        }
        return;
      }
      for (PartKind kind : PartKind.values()) {
        if (kind.name().equals(token)) {
          Optional<Role> role = kind == PartKind.PROFILE ? role(line.keyword()) : Optional.empty();
          offers.addAll(role.map(names::profilesFor).orElseGet(() -> names.parts(List.of(kind))));
        }
      }
      for (Kind kind : Kind.values()) {
        if (kind.name().equals(token) && line.afterNumber()) {
          units(kind);
        }
      }
      if (token.equals("WORD")) {
        word();
      }
      if (token.equals("PLACE") || token.equals("NAMES")) {
        offers.addAll(names.floors());
        offers.addAll(names.rows());
      }
    }

    /** Words that any text may choose, and those that most texts do. */
    private void word() {
      switch (line.keyword()) {
        case "wind" -> values(line.words().isEmpty() ? ZONES : List.of(), "zone of wind pressure");
        case "exposure" -> values(EXPOSURES, "what the metal meets");
        case "finish" -> offers.addAll(names.parts(List.of(PartKind.FINISH)));
        default -> {
          // nobody can guess it
        }
      }
    }

    private void values(List<String> words, String what) {
      words.forEach(word -> offers.add(Offer.of(word, CompletionItemKind.Value, what)));
    }

    private static Optional<Role> role(String word) {
      for (Role role : Role.values()) {
        if (role.spelling().equals(word)) {
          return Optional.of(role);
        }
      }
      return Optional.empty();
    }

    private void units(Kind kind) {
      for (Unit unit : Unit.of(kind)) {
        offers.add(
            Offer.of(
                unit.symbol(),
                CompletionItemKind.Unit,
                kind.words(),
                new Topic("unit", kind.name(), unit.symbol())));
      }
    }

    private void units() {
      if (line.afterNumber()) {
        units(
            switch (line.clause().map(Enum::name).orElse(line.kind().name())) {
              case "MASS" -> Kind.MASS_PER_AREA;
              case "CORNER" -> Kind.ANGLE;
              case "LOADS" -> Kind.FORCE;
              default -> Kind.LENGTH;
            });
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
                    : names.anchors(line.kind()));
        case SLEEVE -> offers.addAll(names.parts(List.of(PartKind.SLEEVE)));
        case LIKE -> offers.addAll(names.walls());
        case ISOLATED_BY, BEDDED_ON -> offers.addAll(names.parts(List.of(PartKind.ISOLATION)));
        case SPREAD_BY -> offers.addAll(names.parts(List.of(PartKind.SPREAD_PLATE)));
        case BOLTED -> offers.addAll(names.parts(List.of(PartKind.FASTENER)));
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
            STICK,
            JOINT,
            CORNER ->
            lines();
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
      if (line.clause().filter(ClauseWord.BOLTED::equals).isPresent()) {
        offers.addAll(names.parts(List.of(PartKind.FASTENER)));
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
