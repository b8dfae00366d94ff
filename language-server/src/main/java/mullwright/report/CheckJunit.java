package mullwright.report;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import mullwright.check.Severity;

/**
 * Writes findings as a test report in the form of JUnit, which most build servers read: one suite a
 * file, one case a rule that found something, failed by errors and warnings; a file in which
 * nothing was found has one case that passes.
 */
public final class CheckJunit {
  private CheckJunit() {}

  /** The whole report, ending with a line end. */
  public static String write(CheckReport report) {
    StringWriter out = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeCharacters("\n");
      xml.writeStartElement("testsuites");
      xml.writeAttribute("name", "mullwright check");
      for (CheckReport.FileFindings file : report.files()) {
        suite(file, xml);
      }
      xml.writeCharacters("\n");
      xml.writeEndElement();
      xml.writeCharacters("\n");
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException broken) {
      // a string takes all that is written
      throw new IllegalStateException(broken);
    }
    return out.toString();
  }

  private static void suite(CheckReport.FileFindings file, XMLStreamWriter xml)
      throws XMLStreamException {
    Map<String, List<CheckReport.Item>> byRule =
        file.items().stream()
            .collect(
                Collectors.groupingBy(
                    item -> item.finding().rule(), TreeMap::new, Collectors.toList()));
    long failed = byRule.values().stream().filter(CheckJunit::fails).count();
    xml.writeCharacters("\n  ");
    xml.writeStartElement("testsuite");
    xml.writeAttribute("name", clean(file.file()));
    xml.writeAttribute("tests", Integer.toString(Math.max(1, byRule.size())));
    xml.writeAttribute("failures", Long.toString(failed));
    if (byRule.isEmpty()) {
      testcase("nothing found", file.file(), xml);
      xml.writeEndElement();
    }
    for (Map.Entry<String, List<CheckReport.Item>> rule : byRule.entrySet()) {
      testcase(rule.getKey(), file.file(), xml);
      String all =
          rule.getValue().stream()
              .map(item -> item.spot().words() + ": " + item.finding().message())
              .collect(Collectors.joining("\n"));
      boolean fails = fails(rule.getValue());
      xml.writeCharacters("\n      ");
      xml.writeStartElement(fails ? "failure" : "system-out");
      if (fails) {
        int count = rule.getValue().size();
        xml.writeAttribute("message", count == 1 ? "1 finding" : count + " findings");
      }
      xml.writeCharacters(clean(all));
      xml.writeEndElement();
      xml.writeCharacters("\n    ");
      xml.writeEndElement();
    }
    xml.writeCharacters("\n  ");
    xml.writeEndElement();
  }

  private static void testcase(String rule, String file, XMLStreamWriter xml)
      throws XMLStreamException {
    xml.writeCharacters("\n    ");
    xml.writeStartElement("testcase");
    xml.writeAttribute("classname", clean(file));
    xml.writeAttribute("name", rule);
  }

  private static boolean fails(List<CheckReport.Item> items) {
    return items.stream().anyMatch(item -> item.finding().severity() != Severity.INFORMATION);
  }

  /** Without what XML 1.0 cannot hold. */
  private static String clean(String text) {
    return text.replaceAll(
        "[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "\ufffd");
  }
}
