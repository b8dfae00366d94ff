package mullwright.analysis.wall;

import java.util.Arrays;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamLoad;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.LoadCase;

/**
 * A beam problem as its numbers in a row, and the names of its cases: equal for equal problems, and
 * quicker to compare.
 */
final class BeamKey {
  private final String cases;
  private final double[] numbers;
  private final int hash;

  private BeamKey(String cases, double[] numbers) {
    this.cases = cases;
    this.numbers = numbers;
    this.hash = Arrays.hashCode(numbers);
  }

  static BeamKey of(BeamProblem problem) {
    Row row = new Row();
    Beam beam = problem.beam();
    row.add(beam.start(), beam.end());
    row.add(beam.stretches().size(), beam.supports().size(), beam.hinges().size());
    beam.stretches().forEach(it -> row.add(it.from(), it.to(), it.rigidity()));
    beam.supports().forEach(it -> row.add(it.at(), it.stiffness()));
    beam.hinges().forEach(it -> row.add(it.at()));
    StringBuilder names = new StringBuilder();
    for (LoadCase loads : problem.cases()) {
      names.append(loads.name()).append('\n');
      row.add(loads.loads().size());
      loads.loads().forEach(load -> add(load, row));
    }
    return new BeamKey(names.toString(), row.numbers());
  }

  // what kind of load comes first, so that no two kinds look alike
  private static void add(BeamLoad load, Row row) {
    if (load instanceof BeamLoad.Distributed it) {
      row.add(1, it.from(), it.to(), it.atFrom(), it.atTo());
    } else if (load instanceof BeamLoad.PointForce it) {
      row.add(2, it.at(), it.force());
    } else if (load instanceof BeamLoad.Couple it) {
      row.add(3, it.at(), it.moment());
    } else {
      throw new IllegalArgumentException("a kind of load without a key: " + load.getClass());
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BeamKey key
        && hash == key.hash
        && Arrays.equals(numbers, key.numbers)
        && cases.equals(key.cases);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** Numbers gathered one after the other. */
  private static final class Row {
    private double[] numbers = new double[64];
    private int count;

    void add(double... more) {
      if (count + more.length > numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * numbers.length + more.length);
      }
      System.arraycopy(more, 0, numbers, count, more.length);
      count += more.length;
    }

    double[] numbers() {
      return Arrays.copyOf(numbers, count);
    }
  }
}
