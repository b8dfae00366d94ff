package mullwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import mullwright.drawing.pdf.Pdf;
import mullwright.drawing.svg.Svg;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/**
 * Sheets against stored ones: element by element, and as a picture. What was stored has been looked
 * at; {@code -Dfixtures.write=true} stores anew and still fails: look at what it wrote.
 */
public final class Golden {
  private static final Path STORED = Path.of("src", "test", "resources", "drawings");
  private static final boolean WRITE = Boolean.getBoolean("fixtures.write");
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final double TOLERANCE = 0.02;

  private Golden() {}

  /** Holds a sheet against the stored one of that name, element by element. */
  public static void elements(Sheet sheet, String name) throws Exception {
    String drawn = Svg.file(sheet);
    Path stored = STORED.resolve(name + ".svg");
    if (WRITE) {
      Files.createDirectories(STORED);
      Files.writeString(stored, drawn);
    }
    List<String> was = elements(Files.readString(stored));
    List<String> now = elements(drawn);
    for (int i = 0; i < Math.min(was.size(), now.size()); i++) {
      same(was.get(i), now.get(i), i);
    }
    assertThat(now).hasSameSizeAs(was);
    assertThat(WRITE).as("stored anew: look at " + stored).isFalse();
  }

  // words must be the same, numbers nearly
  private static void same(String was, String now, int at) {
    assertThat(NUMBER.matcher(now).replaceAll("#"))
        .as("element %d, was %s", at, was)
        .isEqualTo(NUMBER.matcher(was).replaceAll("#"));
    Matcher one = NUMBER.matcher(was);
    Matcher other = NUMBER.matcher(now);
    while (one.find() && other.find()) {
      assertThat(Double.parseDouble(other.group()))
          .as("element %d, was %s, is %s", at, was, now)
          .isCloseTo(Double.parseDouble(one.group()), within(TOLERANCE));
    }
  }

  // each with its attributes and its own text, in order; the style sheet left out, and places in
  // the text, which move with every comment
  private static List<String> elements(String svg) throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)))
            .getDocumentElement();
    List<String> all = new ArrayList<>();
    walk(root, all);
    return all;
  }

  private static void walk(Element element, List<String> all) {
    if (element.getTagName().equals("style")) {
      return;
    }
    StringBuilder told = new StringBuilder(element.getTagName());
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      Node attribute = element.getAttributes().item(i);
      if (!attribute.getNodeName().matches("data-(start|end|file)")) {
        told.append(' ').append(attribute.getNodeName()).append('=');
        told.append(attribute.getNodeValue());
      }
    }
    List<Element> inside = new ArrayList<>();
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        inside.add(child);
      } else if (!node.getTextContent().isBlank()) {
        told.append(" “").append(node.getTextContent()).append('”');
      }
    }
    all.add(told.toString());
    inside.forEach(child -> walk(child, all));
  }

  /** Holds a sheet against the stored picture of that name. */
  public static void picture(Sheet sheet, String name) throws Exception {
    BufferedImage now = painted(sheet);
    Path stored = STORED.resolve(name + ".png");
    if (WRITE) {
      Files.createDirectories(STORED);
      ImageIO.write(now, "png", stored.toFile());
    }
    BufferedImage was = ImageIO.read(stored.toFile());
    assertThat(now.getWidth()).isEqualTo(was.getWidth());
    assertThat(now.getHeight()).isEqualTo(was.getHeight());
    int other = 0;
    for (int y = 0; y < was.getHeight(); y++) {
      for (int x = 0; x < was.getWidth(); x++) {
        int a = was.getRaster().getSample(x, y, 0);
        int b = now.getRaster().getSample(x, y, 0);
        // edges are smoothed a little differently from one runtime to the next
        other += Math.abs(a - b) > 80 ? 1 : 0;
      }
    }
    assertThat((double) other / (was.getWidth() * was.getHeight())).isLessThan(0.002);
    assertThat(WRITE).as("stored anew: look at " + stored).isFalse();
  }

  private static BufferedImage painted(Sheet sheet) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Pdf.write("golden", List.of(sheet), bytes);
    try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
      return new PDFRenderer(pdf).renderImageWithDPI(0, 60, ImageType.GRAY);
    }
  }
}
