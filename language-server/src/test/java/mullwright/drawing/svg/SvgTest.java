package mullwright.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.elevation.Elevation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SvgTest {
  static Stream<String> examples() {
    return ExampleWalls.PATHS.stream();
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList found = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyPieceIsAGroupThatKnowsItsText(String path) throws Exception {
    ExampleWalls.Example example = ExampleWalls.of(path);
    Document document = parsed(Svg.file(Elevation.of(example.layout(), example.options())));
    Set<String> pieces = new HashSet<>();
    for (Element group : elements(document, "g")) {
      if (group.hasAttribute("data-piece")) {
        pieces.add(group.getAttribute("data-piece"));
        int start = Integer.parseInt(group.getAttribute("data-start"));
        int end = Integer.parseInt(group.getAttribute("data-end"));
        assertThat(group.getAttribute("data-file")).isEqualTo(path);
        assertThat(example.text().substring(start, end)).matches("(?s)[a-z-]+( .*)?");
      }
    }
    assertThat(pieces)
        .hasSize(
            example.layout().verticals().size()
                + example.layout().horizontals().size()
                + example.layout().splices().size()
                + example.layout().anchors().size()
                + example.layout().cells().size());
  }

  @Test
  void coloursAreLeftToThePage() {
    ExampleWalls.Example example = ExampleWalls.of("first-wall/lobby.wall");
    String inline = Svg.inline(Elevation.of(example.layout(), example.options()), "one");
    Matcher colours = Pattern.compile("#[0-9a-f]{6}").matcher(inline);
    while (colours.find()) {
      assertThat(inline.substring(0, colours.start())).endsWith(",");
    }
    assertThat(inline).contains("var(--drawing-ink,#").doesNotContain("d-paper");
  }

  @Test
  void twoDrawingsOnAPageHaveNoNameInCommon() throws Exception {
    ExampleWalls.Example example = ExampleWalls.of("ferry-terminal/east.wall");
    Elevation elevation = Elevation.of(example.layout(), example.options());
    assertThat(names(Svg.inline(elevation, "one")))
        .isNotEmpty()
        .doesNotContainAnyElementsOf(names(Svg.inline(elevation, "two")));
  }

  private static Set<String> names(String svg) {
    Set<String> names = new HashSet<>();
    Matcher found = Pattern.compile(" id=\"([^\"]+)\"").matcher(svg);
    while (found.find()) {
      names.add(found.group(1));
    }
    return names;
  }

  @Test
  void theSameTextEveryTime() {
    ExampleWalls.Example once = ExampleWalls.of("tower/north.wall");
    ExampleWalls.Example again = ExampleWalls.of("tower/north.wall");
    assertThat(Svg.file(Elevation.of(once.layout(), once.options())))
        .isEqualTo(Svg.file(Elevation.of(again.layout(), again.options())));
  }
}
