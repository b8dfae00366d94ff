package mullwright.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.elevation.Elevation;
import mullwright.layout.WallLayout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgPartsTest {
  static Stream<String> examples() {
    return ExampleWalls.PATHS.stream();
  }

  private static SvgParts parts(ExampleWalls.Example example) {
    return SvgParts.of(
        Elevation.of(example.layout(), example.options()),
        "d",
        (layer, subject, out) ->
            subject
                .flatMap(is -> is.piece())
                .ifPresent(piece -> out.append(" data-piece=\"" + piece.word() + "\"")));
  }

  private static Element parsed(String markup) throws Exception {
    // Source: XML 1.0, production 1 (document): one element holds all others
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(markup)))
        .getDocumentElement();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyPartIsOneElementUnderAKeyOfItsOwn(String path) throws Exception {
    ExampleWalls.Example example = ExampleWalls.of(path);
    Set<String> keys = new HashSet<>();
    Set<String> pieces = new HashSet<>();
    for (SvgParts.Part part : parts(example).parts()) {
      assertThat(keys.add(part.key())).as(part.key()).isTrue();
      Element element = parsed(part.markup());
      pieces.add(element.getAttribute("data-piece"));
      // a group stands only where there is something to be grouped
      assertThat(element.getTagName().equals("g"))
          .as(part.markup())
          .isEqualTo(element.getElementsByTagName("*").getLength() > 0);
    }
    pieces.remove("");
    WallLayout layout = example.layout();
    assertThat(pieces)
        .hasSize(
            layout.verticals().size()
                + layout.horizontals().size()
                + layout.splices().size()
                + layout.anchors().size()
                + layout.cells().size());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void asManyStrokesAsInTheFile(String path) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    String file = Svg.file(Elevation.of(example.layout(), example.options()));
    SvgParts parts = parts(example);
    StringBuilder page = new StringBuilder(parts.definitions());
    parts.parts().forEach(part -> page.append(part.markup()));
    // lines of the file are strokes of paths in the page, all else is the same element
    long lines = count(file, "<line ");
    assertThat(count(page, "<line ")).isZero();
    assertThat(strokes(page) - strokes(file)).isEqualTo(lines);
    for (String tag : new String[] {"<polygon ", "<polyline ", "<circle ", "<text ", "<use "}) {
      assertThat(count(page, tag)).as(tag).isEqualTo(count(file, tag));
    }
  }

  private static long strokes(CharSequence markup) {
    // begun by a move within a path
    return markup.chars().filter(c -> c == 'M').count() - text(markup);
  }

  // letters of words are no moves
  private static long text(CharSequence markup) {
    return markup
        .toString()
        .replaceAll("(?s)\\sd=\"[^\"]*\"", "")
        .chars()
        .filter(c -> c == 'M')
        .count();
  }

  private static long count(CharSequence markup, String tag) {
    return markup.toString().split(tag, -1).length - 1;
  }
}
