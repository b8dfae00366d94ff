package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Selection;
import mullwright.syntax.StatementKind;

/** Reads {@code horizontal}: what lies on each row, bay by bay. */
final class HorizontalReader {
  private final GridNames names;
  private final Cells cells;
  private final SystemParts parts;
  private final Collector collector;
  private final int bays;

  HorizontalReader(GridNames names, Cells cells, SystemParts parts, Collector collector) {
    this.names = names;
    this.cells = cells;
    this.parts = parts;
    this.collector = collector;
    this.bays = Math.max(1, names.bays().count());
  }

  List<Members.Horizontal> read(WallText wall) {
    Narrower narrower = new Narrower("horizontal", this::where, collector);
    for (Said said : wall.all(StatementKind.HORIZONTAL)) {
      claim(said).ifPresent(narrower::add);
    }
    narrower.solve();
    List<BitSet> standing = standing();
    Repeated.Builder<Members.Horizontal> all =
        new Repeated.Builder<>(narrower.keys(), HorizontalReader::at);
    int[] said = new int[narrower.groups()];
    for (int row = 0; row < names.grid().rows().size(); row++) {
      // one statement says another profile of sill and head than of the rows between
      Arrays.fill(said, -1);
      for (int bay : names.row(row).bays()) {
        Narrower.Resolved resolved = narrower.at(row * bays + bay);
        if (resolved != null && standing.get(bay).get(row)) {
          int group = narrower.group(row * bays + bay);
          if (said[group] < 0) {
            said[group] = all.say(horizontal(resolved, row));
          }
          all.add(said[group], row, bay, 0);
        }
      }
    }
    narrower.reportShadowed();
    return all.list();
  }

  private Members.Horizontal horizontal(Narrower.Resolved resolved, int row) {
    return new Members.Horizontal(-1, -1, profile(resolved, row), resolved.origin());
  }

  private static Members.Horizontal at(Members.Horizontal said, int row, int bay, int none) {
    return new Members.Horizontal(row, bay, said.profile(), said.origin());
  }

  private List<BitSet> standing() {
    List<BitSet> standing = new ArrayList<>();
    for (int bay = 0; bay < names.bays().count(); bay++) {
      BitSet rows = new BitSet();
      for (int row : cells.standing(bay)) {
        rows.set(row);
      }
      standing.add(rows);
    }
    return standing;
  }

  private String where(int key) {
    return "row " + names.row(key / bays).name() + ", " + names.bays().name(key % bays);
  }

  private Optional<Claim> claim(Said said) {
    Optional<Selection> selection =
        said.argument(Argument.Select.class).map(Argument.Select::selection);
    said.clause(ClauseWord.THROUGH, Clause.Selecting.class)
        .ifPresent(
            clause -> new SelectionReader(said, collector).list(clause.selection(), names.lines()));
    if (selection.isEmpty()) {
      return Optional.empty();
    }
    SelectionReader reader = new SelectionReader(said, collector);
    Chosen rows = reader.list(selection.get(), names.rows());
    Optional<BitSet> only =
        said.clause(ClauseWord.BAYS, Clause.Selecting.class)
            .map(clause -> reader.bays(clause.selection(), names.lines(), names.bays()).set());
    BitSet reach = new BitSet();
    for (int row : rows.indices()) {
      for (int bay : names.row(row).bays()) {
        if (only.isEmpty() || only.get().get(bay)) {
          reach.set(row * bays + bay);
        }
      }
    }
    if (reach.isEmpty() && !rows.isEmpty() && only.isPresent() && !only.get().isEmpty()) {
      collector.misplaced(
          '"' + said.spot().text(selection.get().range()) + "\" does not run through these bays",
          "the grid tells where a row runs, by only",
          said.origin());
    }
    Claim claim = new Claim(said, "horizontal", reach);
    parts.profile(claim);
    return Optional.of(claim);
  }

  private Given<String> profile(Narrower.Resolved resolved, int row) {
    Optional<Given<String>> stated = resolved.get(Facet.PROFILE);
    if (stated.isPresent()) {
      return stated.get();
    }
    return parts
        .ofRole(role(names.row(row).base()), resolved.origin())
        .orElseGet(() -> Given.assumed("", resolved.origin(), "not stated"));
  }

  /** Rows named sill and head take those profiles, the rest the intermediate. */
  private static Role role(String base) {
    return switch (base) {
      case "sill" -> Role.SILL;
      case "head" -> Role.HEAD;
      default -> Role.INTERMEDIATE;
    };
  }
}
