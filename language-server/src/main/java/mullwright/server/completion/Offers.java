package mullwright.server.completion;

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
 */
public record Offers(TextRange range, List<Offer> all) {
  private static final List<String> REMARKS = List.of("note", "verify", "hold");

  /** The offers at a cursor. */
  public static Offers at(Cursor cursor) {
    LineContext line = LineContext.of(cursor);
    Set<Offer> offers = new LinkedHashSet<>();
    if (!line.closed()) {
      new Gathering(cursor, line, new Names(cursor), offers).gather();
    }
    return new Offers(line.prefix(), List.copyOf(offers));
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
      } else if (line.wantsOperand()) {
        operand();
      } else {
        units();
        clauses();
      }
    }

    private void statements() {
      for (StatementKind kind : StatementKind.values()) {
        if (kind.standsIn().contains(cursor.block()) && !kind.spelling().isEmpty()) {
          boolean opens = kind.opens().isPresent();
          offers.add(
              new Offer(
                  kind.spelling(),
                  CompletionItemKind.Keyword,
                  kind.meaning(),
                  "",
                  opens ? kind.spelling() + heading(kind) + " {\n\t$0\n}" : ""));
        }
      }
      if (cursor.block() == BlockKind.CATALOG) {
        for (PartKind kind : PartKind.values()) {
          offers.add(
              new Offer(
                  kind.spelling(),
                  CompletionItemKind.Keyword,
                  "a part of the catalog",
                  "",
                  kind.spelling() + " ${1:name} {\n\t$0\n}"));
        }
      }
      Words.schema(cursor)
          .ifPresent(
              schema ->
                  schema
                      .properties()
                      .forEach(
                          property ->
                              offers.add(
                                  new Offer(
                                      property.word(),
                                      CompletionItemKind.Property,
                                      property.pattern(),
                                      property.meaning(),
                                      ""))));
    }

    private static String heading(StatementKind kind) {
      return switch (kind) {
        case WALL_BLOCK -> " ${1:Name}";
        case PROJECT_BLOCK -> " \"${1:Name}\"";
        case CATALOG_BLOCK -> " \"${1:Name}\"";
        default -> "";
      };
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
          offers.addAll(names.parts(List.of(kind)));
        }
      }
      for (Kind kind : Kind.values()) {
        if (kind.name().equals(token) && line.afterNumber()) {
          units(kind);
        }
      }
      if (token.equals("PLACE") || token.equals("NAMES")) {
        offers.addAll(names.floors());
        offers.addAll(names.rows());
      }
    }

    private void units(Kind kind) {
      for (Unit unit : Unit.of(kind)) {
        offers.add(Offer.of(unit.symbol(), CompletionItemKind.Unit, kind.words()));
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
    }

    private void clauseOperand(ClauseWord clause) {
      switch (clause) {
        case AT, FROM -> {
          offers.addAll(names.floors());
          offers.addAll(names.rows());
          if (line.kind() == StatementKind.LINE) {
            offers.addAll(names.lines());
          }
          offers.addAll(names.lets());
        }
        case BAYS, LINES, THROUGH, ONLY, SKIP -> lines();
        case ROWS -> offers.addAll(names.rows());
        case AS -> {
          for (Role role : Role.values()) {
            offers.add(Offer.of(role.spelling(), CompletionItemKind.EnumMember, "role"));
          }
          offers.addAll(names.parts(List.of(PartKind.PROFILE)));
        }
        case WITH -> offers.addAll(names.parts(List.of(PartKind.REINFORCEMENT)));
        case PART ->
            offers.addAll(
                names.parts(
                    List.of(line.kind() == StatementKind.CLIP ? PartKind.CLIP : PartKind.ANCHOR)));
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
        case VISION, SPANDREL -> offers.addAll(names.parts(List.of(PartKind.GLASS)));
        case SLAB_STATEMENT -> offers.addAll(names.floors());
        case OPENING -> {
          for (String kind : List.of("door", "void", "louvre", "vent")) {
            offers.add(Offer.of(kind, CompletionItemKind.EnumMember, "kind of opening"));
          }
        }
        case UNITS -> {
          for (String unit : List.of("inches", "feet", "millimetres", "metres")) {
            offers.add(Offer.of(unit, CompletionItemKind.Unit, "unit of bare numbers"));
          }
        }
        case LET -> offers.addAll(names.lets());
        default -> {
          // a new name, which nobody can guess
        }
      }
    }

    private void clauses() {
      Set<ClauseWord> open = EnumSet.noneOf(ClauseWord.class);
      open.addAll(line.kind().clauses());
      open.removeAll(line.given());
      open.remove(ClauseWord.LOADS);
      for (ClauseWord word : open) {
        offers.add(Offer.of(word.spelling(), CompletionItemKind.Keyword, word.meaning()));
      }
      if (line.clause().filter(ClauseWord.BOLTED::equals).isPresent()) {
        offers.addAll(names.parts(List.of(PartKind.FASTENER)));
      }
      if (line.kind() != StatementKind.UNKNOWN) {
        for (String remark : REMARKS) {
          offers.add(
              new Offer(remark, CompletionItemKind.Keyword, "a remark", "", remark + " \"$0\""));
        }
      }
    }
  }
}
