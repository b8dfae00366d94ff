package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;

/** Reads {@code vertical} and {@code reinforce}: what stands on each line, run by run. */
final class VerticalReader {
  private final GridNames names;
  private final SystemParts parts;
  private final Collector collector;

  VerticalReader(GridNames names, SystemParts parts, Collector collector) {
    this.names = names;
    this.parts = parts;
    this.collector = collector;
  }

  List<Members.Vertical> verticals(WallText wall) {
    LineRuns lines = new LineRuns("vertical", names, collector);
    for (Said said : wall.all(StatementKind.VERTICAL)) {
      lines
          .claim(said)
          .ifPresent(
              claim -> {
                parts.profile(claim);
                lines.add(claim);
              });
    }
    List<Members.Vertical> verticals = new ArrayList<>();
    List<List<LineRuns.Run>> runs = lines.solve();
    for (int line = 0; line < runs.size(); line++) {
      for (LineRuns.Run run : runs.get(line)) {
        Origin origin = run.resolved().origin();
        int at = line;
        Given<String> profile =
            run.resolved().get(Facet.PROFILE).orElseGet(() -> byPlace(at, origin));
        verticals.add(
            new Members.Vertical(
                line,
                profile,
                run.extent().map(extent -> extent.from().height()),
                run.extent().map(extent -> extent.to().height()),
                origin));
      }
    }
    return verticals;
  }

  /** The profile by where the line stands: at a corner, at an end, or between two bays. */
  private Given<String> byPlace(int line, Origin origin) {
    Role role = Role.MULLION;
    boolean corner = names.grid().corners().stream().anyMatch(turn -> turn.line() == line);
    if (corner && parts.has(Role.CORNER)) {
      role = Role.CORNER;
    } else if (names.grid().lines().get(line).end()) {
      role = Role.JAMB;
    }
    String source = "the system's " + role.spelling() + ", by where the line stands";
    String name = parts.ofRole(role, origin).map(Given::value).orElse("");
    return Given.assumed(name, origin, source);
  }

  List<Members.Reinforce> reinforcements(WallText wall) {
    LineRuns lines = new LineRuns("reinforcement", names, collector);
    for (Said said : wall.all(StatementKind.REINFORCE)) {
      Optional<Claim> claim = lines.claim(said);
      claim.ifPresent(
          made -> {
            parts.set(made, Facet.WITH, ClauseWord.WITH, PartKind.REINFORCEMENT);
            parts.set(made, Facet.ISOLATION, ClauseWord.ISOLATED_BY, PartKind.ISOLATION);
            lines.add(made);
          });
    }
    List<Members.Reinforce> all = new ArrayList<>();
    List<List<LineRuns.Run>> runs = lines.solve();
    for (int line = 0; line < runs.size(); line++) {
      for (LineRuns.Run run : runs.get(line)) {
        Optional<Given<String>> with = run.resolved().get(Facet.WITH);
        if (with.isEmpty()) {
          needsPart(run.resolved().said());
          continue;
        }
        all.add(
            new Members.Reinforce(
                line,
                with.get(),
                run.extent().map(extent -> extent.from().height()),
                run.extent().map(extent -> extent.to().height()),
                run.resolved().get(Facet.ISOLATION),
                run.resolved().origin()));
      }
    }
    return all;
  }

  private void needsPart(Said said) {
    boolean named = said.clause(ClauseWord.WITH, Clause.Named.class).isPresent();
    if (!named && !said.broken()) {
      collector.missing(said.words(), "its reinforcement", "with bar-5", said.origin());
    }
  }
}
