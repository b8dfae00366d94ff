package mullwright.analysis.glass;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * Reads what CalculiX answered to a {@link ShellDeck}: the centre deflection, the largest principal
 * stress on the face in tension, and the surface integral of stress.
 *
 * @param deflection at the centre [m]
 * @param stress largest principal stress on the face turned away from the pressure [Pa]
 * @param stressX place of it, 0 at the centre and 1 at the edge, along the long side
 * @param stressY place of it along the short side
 * @param risk J of the glass failure prediction model, integrated over the nodal stresses
 */
record ShellResult(double deflection, double stress, double stressX, double stressY, double risk) {

  /** Reads the result file of a deck run to its full load. */
  static ShellResult read(Path frd, ShellDeck deck) {
    Map<Integer, double[]> places = new HashMap<>();
    Map<Integer, double[]> moves = new HashMap<>();
    Map<Integer, double[]> stresses = new HashMap<>();
    Map<Integer, double[]> block = null;
    try {
      for (String line : Files.readAllLines(frd, StandardCharsets.US_ASCII)) {
        if (line.startsWith("    2C")) {
          block = places;
        } else if (line.startsWith(" -4  DISP")) {
          moves.clear();
          block = moves;
        } else if (line.startsWith(" -4  STRESS")) {
          stresses.clear();
          block = stresses;
        } else if (line.startsWith(" -3") || line.startsWith("    3C")) {
          block = null;
        } else if (line.startsWith(" -1") && block != null) {
          double[] numbers = new double[(line.length() - 13) / 12];
          for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.parseDouble(line.substring(13 + 12 * i, 25 + 12 * i).trim());
          }
          block.put(Integer.parseInt(line.substring(3, 13).trim()), numbers);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return of(deck, places, moves, stresses);
  }

  private static ShellResult of(
      ShellDeck deck,
      Map<Integer, double[]> places,
      Map<Integer, double[]> moves,
      Map<Integer, double[]> stresses) {
    double centre = 0;
    for (Map.Entry<Integer, double[]> place : places.entrySet()) {
      double[] at = place.getValue();
      double[] move = moves.get(place.getKey());
      if (Math.hypot(at[0], at[1]) < 1e-9 && Math.abs(at[2]) < 1e-9 && move != null) {
        centre = move[2];
      }
    }
    double side = Math.signum(centre);
    double[][] risks = new double[ShellDeck.NODES][ShellDeck.NODES];
    double best = Double.NEGATIVE_INFINITY;
    double[] where = {0, 0};
    double unit =
        GlassFailurePrediction.YOUNGS_MODULUS
            * deck.thickness()
            * deck.thickness()
            / (deck.longSide() * deck.shortSide());
    for (Map.Entry<Integer, double[]> stress : stresses.entrySet()) {
      double[] at = places.get(stress.getKey());
      if (at[2] * side > 0.4 * deck.thickness()) {
        double[] s = stress.getValue();
        double radius = Math.hypot((s[0] - s[1]) / 2, s[3]);
        double first = (s[0] + s[1]) / 2 + radius;
        double x = 2 * at[0] / deck.longSide();
        double y = 2 * at[1] / deck.shortSide();
        if (first > 0) {
          risks[row(x)][row(y)] =
              BiaxialFactor.toTheSeventh((first - 2 * radius) / first) * Math.pow(first / unit, 7);
        }
        if (first > best) {
          best = first;
          where = new double[] {x, y};
        }
      }
    }
    return new ShellResult(Math.abs(centre), best, where[0], where[1], Math.log(integral(risks)));
  }

  private static int row(double place) {
    int row = 0;
    while (row + 1 < ShellDeck.NODES
        && Math.abs(ShellDeck.graded(row + 1) - place) < Math.abs(ShellDeck.graded(row) - place)) {
      row++;
    }
    return row;
  }

  /** Eight-node rule over the quarter: corners weigh −1/12, sides 1/3 of an element's area. */
  private static double integral(double[][] values) {
    double sum = 0;
    for (int i = 0; i + 2 < ShellDeck.NODES; i += 2) {
      for (int j = 0; j + 2 < ShellDeck.NODES; j += 2) {
        double area =
            (ShellDeck.graded(i + 2) - ShellDeck.graded(i))
                * (ShellDeck.graded(j + 2) - ShellDeck.graded(j));
        double corners = values[i][j] + values[i + 2][j] + values[i][j + 2] + values[i + 2][j + 2];
        double sides =
            values[i + 1][j] + values[i + 1][j + 2] + values[i][j + 1] + values[i + 2][j + 1];
        sum += area * (sides / 3 - corners / 12);
      }
    }
    return sum;
  }
}
