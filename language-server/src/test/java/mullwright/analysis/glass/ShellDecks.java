package mullwright.analysis.glass;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The stored shell solutions, each with the deck it came from. */
final class ShellDecks {
  static final String SOURCE = "shell elements (S8R) of CalculiX 2.20, deck stored";
  private static final String FOLDER = "/analysis/glass/shell-decks/";

  private ShellDecks() {}

  /** One stored solution. */
  record Solution(ShellDeck deck, ShellResult result) {
    LargeDeflectionPlate.Lite lite() {
      return new LargeDeflectionPlate.Lite(
          deck.longSide(),
          deck.shortSide(),
          deck.thickness(),
          GlassFailurePrediction.YOUNGS_MODULUS,
          GlassFailurePrediction.POISSONS_RATIO,
          deck.pressure());
    }
  }

  static List<Solution> all() {
    return resource("results.tsv")
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(ShellDecks::solution)
        .toList();
  }

  /** Text of a file of the folder. */
  static String resource(String name) {
    try (InputStream in = ShellDecks.class.getResourceAsStream(FOLDER + name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Solution solution(String line) {
    String[] cells = line.split("\t");
    double[] n = new double[10];
    for (int i = 1; i < cells.length; i++) {
      n[i] = Double.parseDouble(cells[i]);
    }
    return new Solution(
        new ShellDeck(cells[0], n[1], n[2], n[3], n[4]),
        new ShellResult(n[5], n[6], n[7], n[8], n[9]));
  }
}
