package mullwright.analysis.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * Solves a beam another way than the code under test: unknown are the forces of the supports, the
 * place and slope of its start and the kinks at its hinges; M is written down from statics, and
 * deflection is M/EI integrated twice by quadrature (textbook, force method).
 */
final class ForceMethod {
  private static final double[] POINTS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHTS = {5 / 18.0, 8 / 18.0, 5 / 18.0};
  private static final int PARTS = 6;

  private final Beam beam;
  private final List<BeamLoad> loads;
  private final double[] breaks;
  private final double[] unknowns;

  ForceMethod(Beam beam, List<BeamLoad> loads) {
    this.beam = beam;
    this.loads = loads;
    TreeSet<Double> places = new TreeSet<>(List.of(beam.start(), beam.end()));
    beam.supports().forEach(s -> places.add(s.at()));
    beam.hinges().forEach(h -> places.add(h.at()));
    beam.stretches().forEach(s -> places.addAll(List.of(s.from(), s.to())));
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Distributed d) {
        places.addAll(List.of(d.from(), d.to()));
      } else if (load instanceof BeamLoad.PointForce p) {
        places.add(p.at());
      } else if (load instanceof BeamLoad.Couple c) {
        places.add(c.at());
      }
    }
    breaks =
        places.stream()
            .mapToDouble(Double::doubleValue)
            .filter(x -> x >= beam.start() && x <= beam.end())
            .toArray();
    unknowns = solve();
  }

  private double rigidity(double x) {
    return beam.stretches().stream()
        .filter(s -> s.from() <= x && x <= s.to())
        .mapToDouble(Beam.Stretch::rigidity)
        .sum();
  }

  /** Deflection at x by moments alone, from a start that neither moves nor turns. */
  private double bent(DoubleUnaryOperator moment, double x) {
    double sum = 0;
    for (int i = 1; i < breaks.length && breaks[i - 1] < x; i++) {
      double to = Math.min(breaks[i], x);
      double part = (to - breaks[i - 1]) / PARTS;
      for (int p = 0; p < PARTS; p++) {
        for (int g = 0; g < POINTS.length; g++) {
          double t = breaks[i - 1] + (p + POINTS[g]) * part;
          sum -= WEIGHTS[g] * part * (x - t) * moment.applyAsDouble(t) / rigidity(t);
        }
      }
    }
    return sum;
  }

  private double momentOfLoads(double x) {
    double sum = 0;
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Distributed d && x > d.from()) {
        double to = Math.min(x, d.to());
        double length = to - d.from();
        double atTo = d.atFrom() + (d.atTo() - d.atFrom()) * length / (d.to() - d.from());
        // rectangle and triangle about x
        sum -= d.atFrom() * length * (x - d.from() - length / 2);
        sum -= (atTo - d.atFrom()) * length / 2 * (x - d.from() - length * 2 / 3);
      } else if (load instanceof BeamLoad.PointForce p && x > p.at()) {
        sum -= p.force() * (x - p.at());
      } else if (load instanceof BeamLoad.Couple c && x > c.at()) {
        sum += c.moment();
      }
    }
    return sum;
  }

  private static double past(double x, double at) {
    return Math.max(0, x - at);
  }

  private double[] solve() {
    int supports = beam.supports().size();
    int hinges = beam.hinges().size();
    int n = supports + hinges + 2;
    double scale = rigidity((beam.start() + beam.end()) / 2);
    List<double[]> rows = new ArrayList<>();
    for (Beam.Support held : beam.supports()) {
      double[] row = new double[n + 1];
      for (int i = 0; i < supports; i++) {
        double at = beam.supports().get(i).at();
        row[i] = scale * bent(t -> past(t, at), held.at());
      }
      row[supports] = 1;
      row[supports + 1] = held.at() - beam.start();
      for (int h = 0; h < hinges; h++) {
        row[supports + 2 + h] = past(held.at(), beam.hinges().get(h).at());
      }
      row[n] = -scale * bent(this::momentOfLoads, held.at());
      rows.add(row);
    }
    List<Double> free = new ArrayList<>(beam.hinges().stream().map(Beam.Hinge::at).toList());
    free.add(beam.end());
    for (double at : free) {
      double[] row = new double[n + 1];
      for (int i = 0; i < supports; i++) {
        row[i] = past(at, beam.supports().get(i).at());
      }
      row[n] = -momentOfLoads(at);
      rows.add(row);
    }
    double[] forces = new double[n + 1];
    for (int i = 0; i < supports; i++) {
      forces[i] = 1;
    }
    // shear beyond the end is nil: its slope of the moment there
    forces[n] = -(momentOfLoads(beam.end() + 2) - momentOfLoads(beam.end() + 1));
    rows.add(forces);
    double[] found = eliminate(rows.toArray(double[][]::new));
    for (int i = supports; i < n; i++) {
      found[i] /= scale;
    }
    return found;
  }

  private static double[] eliminate(double[][] rows) {
    int n = rows.length;
    for (int c = 0; c < n; c++) {
      int pivot = c;
      for (int r = c + 1; r < n; r++) {
        pivot = Math.abs(rows[r][c]) > Math.abs(rows[pivot][c]) ? r : pivot;
      }
      double[] row = rows[pivot];
      rows[pivot] = rows[c];
      rows[c] = row;
      for (int r = 0; r < n; r++) {
        double times = r == c ? 0 : rows[r][c] / row[c];
        for (int k = c; k <= n && times != 0; k++) {
          rows[r][k] -= times * row[k];
        }
      }
    }
    double[] found = new double[n];
    for (int c = 0; c < n; c++) {
      found[c] = rows[c][n] / rows[c][c];
    }
    return found;
  }

  double reaction(int support) {
    return unknowns[support];
  }

  double moment(double x) {
    double sum = momentOfLoads(x);
    for (int i = 0; i < beam.supports().size(); i++) {
      sum += unknowns[i] * past(x, beam.supports().get(i).at());
    }
    return sum;
  }

  double deflection(double x) {
    int supports = beam.supports().size();
    double sum = unknowns[supports] + unknowns[supports + 1] * (x - beam.start());
    for (int h = 0; h < beam.hinges().size(); h++) {
      sum += unknowns[supports + 2 + h] * past(x, beam.hinges().get(h).at());
    }
    return sum + bent(this::moment, x);
  }
}
