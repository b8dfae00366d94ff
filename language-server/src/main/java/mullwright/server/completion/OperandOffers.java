package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.PartKind;
import mullwright.model.Role;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;
import org.eclipse.lsp4j.CompletionItemKind;

/** What a statement or a clause takes next: names of what there is, words of a fixed list. */
record OperandOffers(LineContext line, Names names, Set<Offer> offers) {
  void gather() {
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
    switch (line.kind().form()) {
      case LINES, BAYS -> lines();
      case JOINED_LINES -> offers.addAll(names.lines());
      case LINE_AND_ANGLE -> offers.addAll(names.linesBetween());
      case ROWS -> {
        offers.add(Offer.of("all", CompletionItemKind.Keyword, "all rows"));
        offers.addAll(names.rows());
      }
      case GLASS -> offers.addAll(names.glass(line.kind() == StatementKind.VISION));
      case LINE_NAMES, LINE_NAME -> next(names.lines(), "line");
      case FLOOR_NAMES -> next(names.floors(), "floor");
      case DEPTH_OF_FLOORS -> offers.addAll(line.words().isEmpty() ? names.lets() : names.floors());
      case OWN -> own();
    }
  }

  private void own() {
    switch (line.kind()) {
      case FLOOR -> next(names.floors(), "floor");
      case ROW -> next(names.rows(), "row");
      case OPENING -> {
        for (String kind : Offers.OPENINGS) {
          offers.add(Offer.of(kind, CompletionItemKind.EnumMember, "kind of opening"));
        }
      }
      case UNITS -> {
        for (String unit : Offers.UNITS) {
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
}
