package mullwright.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.Layer;
import mullwright.drawing.Pen;
import mullwright.drawing.elevation.Elevation;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DxfTest {
  private record Tag(int code, String value) {}

  static Stream<String> examples() {
    return ExampleWalls.PATHS.stream();
  }

  private static String drawn(String path) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    return Dxf.of(Elevation.of(example.layout(), example.options()), example.options().units());
  }

  private static List<Tag> tags(String text) {
    String[] lines = text.split("\n");
    // pairs of lines, so an even number of them (DXF reference, release 12, from memory)
    assertThat(lines.length % 2).isZero();
    List<Tag> tags = new ArrayList<>();
    for (int at = 0; at < lines.length; at += 2) {
      tags.add(new Tag(Integer.parseInt(lines[at].strip()), lines[at + 1]));
    }
    return tags;
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everySectionAndTableIsClosed(String path) {
    List<String> open = new ArrayList<>();
    List<Tag> tags = tags(drawn(path));
    for (Tag tag : tags) {
      if (tag.code() == 0) {
        switch (tag.value()) {
          case "SECTION", "TABLE", "BLOCK", "POLYLINE" -> open.add(tag.value());
          case "ENDSEC" -> assertThat(open.remove(open.size() - 1)).isEqualTo("SECTION");
          case "ENDTAB" -> assertThat(open.remove(open.size() - 1)).isEqualTo("TABLE");
          case "ENDBLK" -> assertThat(open.remove(open.size() - 1)).isEqualTo("BLOCK");
          case "SEQEND" -> assertThat(open.remove(open.size() - 1)).isEqualTo("POLYLINE");
          default -> {}
        }
      }
    }
    assertThat(open).isEmpty();
    assertThat(tags.get(tags.size() - 1)).isEqualTo(new Tag(0, "EOF"));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void sevenBitsAndLayersThatAreDeclared(String path) {
    String text = drawn(path);
    assertThat(text.chars().allMatch(c -> c < 128)).isTrue();
    Set<String> declared = new HashSet<>();
    List<Tag> tags = tags(text);
    for (int i = 1; i < tags.size(); i++) {
      if (tags.get(i - 1).equals(new Tag(0, "LAYER"))) {
        declared.add(tags.get(i).value());
      }
      if (tags.get(i).code() == 8) {
        assertThat(declared).contains(tags.get(i).value());
      }
    }
    // names of upper-case letters, digits, $ _ -, at most 31 of them (DXF reference, release 12,
    // from memory)
    assertThat(declared).allMatch(name -> name.matches("[A-Z0-9$_-]{1,31}"));
  }

  @Test
  void repeatedAnchorsAreOneBlock() {
    List<Tag> tags = tags(drawn("tower/north.wall"));
    long blocks = tags.stream().filter(tag -> tag.equals(new Tag(0, "BLOCK"))).count();
    long inserts = tags.stream().filter(tag -> tag.equals(new Tag(0, "INSERT"))).count();
    assertThat(blocks).isEqualTo(2);
    assertThat(inserts).isEqualTo(ExampleWalls.of("tower/north.wall").layout().anchors().size());
  }

  @Test
  void aVerticalIsAsLongAsItIsCut() {
    // examples/ferry-terminal/east.wall, line A: x 0, half a face of 2 1/2", in inches
    List<Tag> tags = tags(drawn("ferry-terminal/east.wall"));
    double length =
        ExampleWalls.of("ferry-terminal/east.wall").layout().verticals().get(0).length().toInches();
    double low = Double.NaN;
    boolean found = false;
    for (int i = 0; i + 2 < tags.size(); i++) {
      if (tags.get(i).code() == 10 && tags.get(i).value().equals("-1.25")) {
        double y = Double.parseDouble(tags.get(i + 1).value());
        found |= Math.abs(y - low - length) < 1e-5;
        low = y;
      }
    }
    assertThat(found).isTrue();
  }

  @Test
  void aLineIsTheSmallestDrawing() {
    // CHECK 17a, DXF reference, release 12, from memory: the smallest file there is, one line of
    // 57.5 on its layer, each token a line of its own
    DxfSurface surface = new DxfSurface(1);
    surface.beginLayer(Layer.MEMBER);
    surface.line(0, 0, 57.5, 0, Pen.EDGE);
    surface.endLayer();
    String file =
        new Tags().text(0, "SECTION").text(2, "ENTITIES").toString()
            + surface.entities()
            + new Tags().text(0, "ENDSEC").text(0, "EOF");
    String smallest =
        "0 SECTION 2 ENTITIES 0 LINE 8 MEMBER 10 0.0 20 0.0 30 0.0 11 57.5 21 0.0 31 0.0"
            + " 0 ENDSEC 0 EOF ";
    assertThat(tags(file)).isEqualTo(tags(smallest.replace(' ', '\n')));
    assertThat(file.lines().count() % 2).isZero();
  }

  @Test
  void decimalsAreOfAnyLocale() {
    Tags tags = new Tags().number(10, -57.5).number(20, 1.0 / 3).number(30, -1e-9);
    assertThat(tags.toString()).isEqualTo("10\n-57.5\n20\n0.333333\n30\n0.0\n");
  }

  @Test
  void signsOfTheFormat() {
    // control codes of DXF text, from memory: %%d degree, %%p plus or minus, %%c diameter,
    // \U+00BD a letter beyond ASCII by its number
    assertThat(DxfText.of("90° ±0 ⌀12 100%% ½ \n")).isEqualTo("90%%d %%p0 %%c12 100% % \\U+00BD ?");
  }

  @Test
  void metricWallsAreInMillimetres() {
    ExampleWalls.Example example = ExampleWalls.of("library-corner/reading-room.wall");
    String text = Dxf.of(Elevation.of(example.layout(), example.options()), UnitSystem.SI);
    assertThat(text).contains("1 unit is 1 millimetre");
    List<Tag> tags = tags(text);
    double right = Double.NaN;
    for (int i = 0; i < tags.size(); i++) {
      if (tags.get(i).value().equals("$LIMMAX")) {
        right = Double.parseDouble(tags.get(i + 1).value());
      }
    }
    // lines of 10 600 mm, and what stands beside them
    assertThat(right).isCloseTo(12000, within(1000.0));
  }
}
