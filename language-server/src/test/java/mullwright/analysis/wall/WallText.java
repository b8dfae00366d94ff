package mullwright.analysis.wall;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.syntax.ParsedFile;

/** A small wall read from text, with a catalog of its own, and what is asked of it. */
final class WallText {
  /** Faces as thin as can be, so that a beam is as long as the handbook's. */
  private static final String CATALOG =
      """
      catalog "Plain" {
        units inches
        system plain {
          mullion mullion
          jamb mullion
          sill rail
          head rail
          intermediate rail
          glass-plane 6"
        }
        profile mullion {
          role mullion
          face 1/16"
          depth 6"
          Ix 8 in4
          Sx 2.6 in3
          alloy 6063-T6
          mass 2.4 lb/ft
          bite 0"
        }
        profile mullion-stiff {
          role mullion
          face 1/16"
          depth 6"
          Ix 16 in4
        }
        profile mullion-split {
          role mullion
          face 1/16"
          depth 6"
          Ix 8 in4
          Iy 1.5 in4
          Sx 2.6 in3
          Zx 2.99 in3
          J 0.05 in4
          alloy 6063-T6
        }
        profile rail {
          role intermediate
          face 1/16"
          depth 6"
          Ix 8 in4
          Iy 0.6 in4
          mass 2.2 lb/ft
          bite 0"
        }
        profile rail-short {
          role intermediate
          face 1/16"
          depth 6"
          Ix 1.5 in4
        }
        profile mullion-broad {
          role mullion
          face 8 1/16"
          depth 6"
          Ix 8 in4
          mass 2.4 lb/ft
          bite 0"
        }
        profile rail-broad {
          role intermediate
          face 4"
          depth 6"
          Ix 8 in4
          mass 2.2 lb/ft
          bite 0"
        }
        reinforcement flat {
          Ix 5.2083 in4
          Sx 2.0833 in3
        }
        anchor angle {
          bolt-line 0" below top of slab
          height 4"
          capacity 400 lb down
        }
        anchor slot {
          bolt-line 0" below top of slab
          slot 1 1/2"
        }
        fastener bolt {
          metal stainless
          diameter 1/2"
        }
        glass G {
          ply 6 mm clear
        }
      }
      """;

  private final WallAnalysis analysis;

  WallText(String wall) {
    String text = CATALOG + "\nwall Test {\n  system plain\n" + wall + "\n}\n";
    Map<String, ParsedFile> files = Map.of("test.wall", ParsedFile.parse(text));
    Model model =
        ModelReader.read(
            "test.wall", name -> Optional.ofNullable(files.get(name)), new ModelMemory());
    files.get("test.wall").segments().stream()
        .flatMap(segment -> segment.problems().stream())
        .forEach(
            problem -> {
              throw new AssertionError(problem.toString());
            });
    if (!model.problems().isEmpty()) {
      throw new AssertionError(model.problems().toString());
    }
    WallLayout layout = LayoutBuilder.layOut(model.walls().get(0), model.catalog());
    analysis = WallAnalysis.of(layout, new BeamMemory());
  }

  WallAnalysis analysis() {
    return analysis;
  }

  /** The lengths of a line's vertical, from below. */
  List<VerticalPiece> lengths(String line) {
    return analysis.layout().verticals().stream()
        .filter(p -> lineOf(p.line()).equals(line))
        .toList();
  }

  private String lineOf(int line) {
    return analysis.layout().wall().grid().lines().get(line).name();
  }

  VerticalRun run(String line) {
    return analysis.runOf(lengths(line).get(0));
  }

  SolvedBeam beam(String line) {
    return run(line).standing().orElseThrow();
  }

  /** The anchors of a line, from below. */
  List<PlacedAnchor> anchors(String line) {
    return analysis.layout().anchors().stream()
        .filter(anchor -> lineOf(anchor.use().line()).equals(line))
        .toList();
  }

  AnchorLoad load(String line, int anchor) {
    return analysis.loadOn(anchors(line).get(anchor)).orElseThrow();
  }

  /** The horizontal of that name: {@code horizontal sill, bay A-B}. */
  HorizontalSpan horizontal(String name) {
    return analysis.spans().stream()
        .filter(span -> span.piece().name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
