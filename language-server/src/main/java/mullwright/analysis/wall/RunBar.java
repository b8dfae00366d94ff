package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.WallLayout;
import mullwright.model.Members;
import mullwright.model.Part;

/**
 * Reinforcement in a run of vertical: it bends with the member over its reach and takes its share
 * of the moment by stiffness.
 *
 * @param from lower end [m]; {@code to} upper end [m], both within the run
 * @param part the bar or tube; it states its second moment
 * @param reinforce the statement
 */
public record RunBar(double from, double to, Part.Reinforcement part, Members.Reinforce reinforce) {

  /** Flexural rigidity [N·m²]. */
  public double rigidity() {
    return part.ix().orElseThrow().value().toSi() * Stiffness.modulus(part.metal().value());
  }

  /** The bars of a line that reach into a run from {@code start} to {@code end} [m]. */
  static List<RunBar> of(WallLayout layout, int line, double start, double end) {
    List<RunBar> found = new ArrayList<>();
    for (Members.Reinforce reinforce : layout.wall().members().reinforcements()) {
      if (reinforce.line() != line) {
        continue;
      }
      Optional<Part.Reinforcement> part =
          layout.catalog().find(Part.Reinforcement.class, reinforce.part().value());
      double from = reinforce.from().map(h -> h.elevation().toMetres()).orElse(start);
      double to = reinforce.to().map(h -> h.elevation().toMetres()).orElse(end);
      from = Math.max(from, start);
      to = Math.min(to, end);
      if (part.filter(p -> p.ix().isPresent()).isPresent() && from < to) {
        found.add(new RunBar(from, to, part.get(), reinforce));
      }
    }
    return found;
  }
}
