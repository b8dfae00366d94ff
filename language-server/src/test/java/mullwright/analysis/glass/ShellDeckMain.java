package mullwright.analysis.glass;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes the stored decks anew into a folder, and prints the results found there.
 *
 * <p>Between two runs, start {@code ccx -i lite-01} and so on in the folder: the first run writes
 * the decks, the second prints the lines of {@code results.tsv} for those decks that have a result.
 */
final class ShellDeckMain {
  private ShellDeckMain() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (ShellDecks.Solution stored : ShellDecks.all()) {
      ShellDeck deck = stored.deck();
      Path frd = folder.resolve(deck.name() + ".frd");
      if (Files.exists(frd)) {
        ShellResult found = ShellResult.read(frd, deck);
        out.printf(
            Locale.ROOT,
            "%s\t%s\t%s\t%s\t%s\t%.5e\t%.5e\t%.3f\t%.3f\t%.3f%n",
            deck.name(),
            deck.longSide(),
            deck.shortSide(),
            deck.thickness(),
            deck.pressure(),
            found.deflection(),
            found.stress(),
            found.stressX(),
            found.stressY(),
            found.risk());
      } else {
        Files.writeString(folder.resolve(deck.name() + ".inp"), deck.text());
      }
    }
  }
}
