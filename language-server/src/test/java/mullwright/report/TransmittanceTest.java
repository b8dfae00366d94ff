package mullwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.FaceTransmittance;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.syntax.ParsedFile;
import org.junit.jupiter.api.Test;

/** Transmittance of faces, from the text to the sum. */
class TransmittanceTest {
  private static final String WALL =
      """
      units millimetres
      catalog "T" {
        system t {
          mullion bar
          jamb bar
          sill rail
          head rail
          intermediate rail
          glass-plane 150
        }
        profile bar {
          face 60
          depth 150
          U 2.2 W/m2K
        }
        profile rail {
          role intermediate
          face 60
          depth 150
          U 2.4 W/m2K
        }
        glass V {
          ply 6 annealed
          U 1.1 W/m2K
          edge-psi 0.11 W/mK
        }
        glass S {
          ply 6 annealed
          opacified
          U 0.35 W/m2K
          edge-psi 0.18 W/mK
        }
      }
      wall W {
        system t
        grid {
          lines A, B at 0, 1500
          floor L1 at 0
          row sill at 30
          row mid at 2430
          row head at 3630
        }
        members {
          vertical all as jamb
          horizontal all
        }
        lites {
          vision V rows sill..mid
          spandrel S rows mid..head
        }
      }
      """;

  private static List<FaceTransmittance> faces(String text) {
    ParsedFile file = ParsedFile.parse(text);
    Model model = ModelReader.read("w.wall", name -> Optional.of(file), new ModelMemory());
    assertThat(model.problems()).isEmpty();
    WallLayout layout = LayoutBuilder.layOut(model.walls().get(0), model.catalog());
    return FaceTransmittance.of(layout);
  }

  @Test
  void aFrameOfOneBayAddsUpByHand() {
    FaceTransmittance face = faces(WALL).get(0);
    // ISO 12631, component method, worked by hand: bay 1440 mm clear; glass 2340 and panel 1140
    // high;
    // two verticals 60 × 3660, three horizontals 60 × 1440
    double glass = 1.44 * 2.34 * 1.1 + 1.44 * 1.14 * 0.35;
    double frame = 2 * 0.06 * 3.66 * 2.2 + 3 * 0.06 * 1.44 * 2.4;
    double edges = 2 * (1.44 + 2.34) * 0.11 + 2 * (1.44 + 1.14) * 0.18;
    double area = 1.56 * 3.66;
    assertThat(face.area()).isCloseTo(area, within(1e-9));
    assertThat(face.result().orElseThrow().transmittance())
        .isCloseTo((glass + frame + edges) / area, within(1e-9));
  }

  @Test
  void nothingIsAssumedForWhatIsNotStated() {
    FaceTransmittance face = faces(WALL.replace("    U 2.4 W/m2K\n", "")).get(0);
    assertThat(face.complete()).isFalse();
    assertThat(face.result()).isEmpty();
    assertThat(face.areas())
        .filteredOn(area -> area.transmittance().isEmpty())
        .extracting(FaceTransmittance.Area::part)
        .containsOnly("rail");
  }
}
