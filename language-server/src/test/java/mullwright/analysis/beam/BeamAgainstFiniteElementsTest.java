package mullwright.analysis.beam;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import mullwright.analysis.OutsideCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds {@link HingedBeam} against recorded answers of a general finite-element program.
 *
 * <p>Each {@code *.case} beside {@code make_decks.py} states a beam in plain words and what
 * CalculiX CrunchiX 2.20 answered to the deck of the same name: three-dimensional solids behind
 * quadratic beam elements, so another theory (shear-deformable) and another code.
 */
public class BeamAgainstFiniteElementsTest {
  private static final double MM = 1e-3;
  private static final String FINITE_ELEMENTS =
      "beams (B32R) of CalculiX 2.20, deck stored, share of the greatest in the case";

  /** Half a per cent of the greatest value of its kind in the case. */
  private static final double SHARE = 0.005;

  static Stream<Path> cases() throws IOException, URISyntaxException {
    URL folder = BeamAgainstFiniteElementsTest.class.getResource("/analysis/beam");
    try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
      return files.filter(f -> f.toString().endsWith(".case")).sorted().toList().stream();
    }
  }

  @Test
  void everyCaseHasItsDeck() throws IOException, URISyntaxException {
    List<Path> all = cases().toList();
    assertThat(all).hasSizeGreaterThanOrEqualTo(8);
    for (Path each : all) {
      String name = each.getFileName().toString().replace(".case", ".inp");
      assertThat(each.resolveSibling(name)).exists();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithinHalfAPerCent(Path file) throws IOException {
    List<OutsideCheck> readings = comparisons(file);
    assertThat(readings).hasSizeGreaterThan(6);
    readings.forEach(OutsideCheck::hold);
  }

  /** Every reading of every case. */
  public static List<OutsideCheck> comparisons() {
    try (Stream<Path> files = cases()) {
      List<OutsideCheck> all = new ArrayList<>();
      for (Path file : files.toList()) {
        all.addAll(comparisons(file));
      }
      return all;
    } catch (IOException | URISyntaxException problem) {
      throw new AssertionError(problem);
    }
  }

  /** The readings of a case, each as 1 more than its share of the greatest of its kind. */
  private static List<OutsideCheck> comparisons(Path file) throws IOException {
    Case given = new Case(Files.readAllLines(file, StandardCharsets.US_ASCII));
    BeamResponse response = given.solve();
    double from = response.beam().start();
    double to = response.beam().end();
    double sag = Math.abs(response.deflections(from, to).largest().value());
    double bend = Math.abs(response.moments().largest().value());
    double push =
        response.reactions().stream().mapToDouble(r -> Math.abs(r.force())).max().orElseThrow();
    String name = file.getFileName().toString().replace(".case", "");
    List<OutsideCheck> checks = new ArrayList<>();
    for (Reading reading : given.readings) {
      double off =
          switch (reading.what) {
            case "reaction" -> (given.reaction(response, reading.at) - reading.value) / push;
            case "deflection" -> (response.deflectionAt(reading.at) - reading.value * MM) / sag;
            case "moment" -> (response.momentAt(reading.at) - reading.value * MM) / bend;
            default -> throw new AssertionError(reading.what);
          };
      String what = reading.what + " at " + reading.at + " m of " + name;
      checks.add(new OutsideCheck(what, 1 + off, 1, SHARE, FINITE_ELEMENTS));
    }
    return checks;
  }

  private record Reading(String what, double at, double value) {}

  /** A case file: millimetres and newtons in, metres and newtons for the method. */
  private static final class Case {
    private double end;
    private final List<Beam.Stretch> stretches = new ArrayList<>();
    private final List<Beam.Support> supports = new ArrayList<>();
    private final List<Beam.Hinge> hinges = new ArrayList<>();
    private final List<BeamLoad> loads = new ArrayList<>();
    final List<Reading> readings = new ArrayList<>();

    Case(List<String> lines) {
      for (String line : lines) {
        if (!line.startsWith("#")) {
          String[] words = line.split(" ");
          double[] n = Stream.of(words).skip(1).mapToDouble(Double::parseDouble).toArray();
          read(words[0], n);
        }
      }
    }

    private void read(String word, double[] n) {
      double at = n[0] * MM;
      switch (word) {
        case "beam" -> end = n[1] * MM;
        case "stretch" -> stretches.add(new Beam.Stretch(at, n[1] * MM, n[2] * MM * MM));
        case "pin" -> supports.add(Beam.Support.pin(at));
        case "spring" -> supports.add(new Beam.Support(at, n[1] / MM));
        case "hinge" -> hinges.add(new Beam.Hinge(at));
        case "line" -> loads.add(new BeamLoad.Distributed(at, n[1] * MM, n[2] / MM, n[3] / MM));
        case "force" -> loads.add(new BeamLoad.PointForce(at, n[1]));
        case "couple" -> loads.add(new BeamLoad.Couple(at, n[1] * MM));
        default -> readings.add(new Reading(word, at, n[1]));
      }
    }

    BeamResponse solve() {
      Beam beam = new Beam(0, end, stretches, supports, hinges);
      return BeamFixtures.solve(beam, loads.toArray(BeamLoad[]::new));
    }

    double reaction(BeamResponse response, double at) {
      return response.reactions().stream()
          .filter(r -> r.at() == at)
          .mapToDouble(BeamResponse.Reaction::force)
          .sum();
    }
  }
}
