package mullwright.syntax;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads the word lists out of the syntax files of editors. */
final class EditorWords {
  private static final Path CLIENTS = Path.of("..", "editor-clients");

  private EditorWords() {}

  /** A syntax file of an editor. */
  interface File {
    Set<String> words(LanguageWords.Group group);
  }

  static Path path(String file) {
    return CLIENTS.resolve(file);
  }

  static String text(String file) {
    try {
      return Files.readString(path(file));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** {@code let s:units = split('mm cm' . ' m')}. */
  static File vim(String file) {
    String text = text(file).replaceAll("\\n\\s*\\\\", "");
    return group ->
        words(
            String.join(
                "", all(one("let s:" + name(group) + " = split\\((.*)\\)", text), "'", "'")),
            " ");
  }

  /** {@code (defconst wall--units '("mm" "cm"))}. */
  static File emacs(String file) {
    String text = text(file);
    return group ->
        new TreeSet<>(
            all(one("\\(defconst wall--" + name(group) + "\\s+'\\(([^)]*)\\)", text), "\"", "\""));
  }

  /** {@code units: 'mm|cm'}. */
  static File sublime(String file) {
    String text = text(file);
    return group -> words(one("(?m)^  " + name(group) + ": '([^']*)'$", text), "\\|");
  }

  /** {@code <list name="clauses"><item>at</item>…}; the units are alternatives of a pattern. */
  static File kate(String file) {
    Document xml = xml(text(file));
    return group -> {
      if (group == LanguageWords.Group.UNITS) {
        return words(
            one("\\(\\?:(.*)\\)\\(\\?!", inContext(xml, "Unit").getAttribute("String")), "\\|");
      }
      return items(xml, name(group));
    };
  }

  /** Rules of a repository, each with its words as alternatives in brackets. */
  static File textMate(String file) {
    String text = text(file);
    return group -> {
      Set<String> words = new TreeSet<>();
      for (String rule : rules(group)) {
        Matcher found =
            Pattern.compile(
                    "\""
                        + rule
                        + "\"\\s*:\\s*\\{(?:\\s*\"comment\"\\s*:\\s*\"[^\"]*\",)?"
                        + "\\s*\"match\"\\s*:\\s*\"((?:[^\"\\\\]|\\\\.)*)\"")
                .matcher(text);
        while (found.find()) {
          alternatives(found.group(1)).forEach(words::add);
        }
      }
      return words;
    };
  }

  private static List<String> rules(LanguageWords.Group group) {
    return switch (group) {
      case STATEMENTS -> List.of("[a-z]+-statements");
      case PARTS -> List.of("catalog-parts");
      case JOINERS -> List.of("joiners", "times", "bearings", "directions");
      case CLAUSES, REMARKS, UNITS -> List.of(name(group));
    };
  }

  /** The words of the brackets in which words stand and nothing else; both of {@code by others}. */
  private static Set<String> alternatives(String pattern) {
    Set<String> words = new TreeSet<>();
    Matcher bracket = Pattern.compile("\\(((?:[\\p{L}°%/·0-9 -]|\\|)+)\\)").matcher(pattern);
    while (bracket.find()) {
      words.addAll(words(bracket.group(1), "[| ]"));
    }
    return words;
  }

  private static String name(LanguageWords.Group group) {
    return group.name().toLowerCase(Locale.ROOT);
  }

  private static Set<String> words(String text, String between) {
    return Arrays.stream(text.split(between))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String one(String pattern, String text) {
    List<MatchResult> found = Pattern.compile(pattern).matcher(text).results().toList();
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " places match " + pattern);
    }
    return found.get(0).group(1);
  }

  private static List<String> all(String text, String open, String close) {
    return Pattern.compile(open + "([^" + close + "]*)" + close)
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  private static Document xml(String text) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private static Set<String> items(Document xml, String list) {
    Set<String> words = new TreeSet<>();
    NodeList items = named(xml, "list", list).getElementsByTagName("item");
    for (int i = 0; i < items.getLength(); i++) {
      words.add(items.item(i).getTextContent());
    }
    return words;
  }

  private static Element inContext(Document xml, String context) {
    return (Element) named(xml, "context", context).getElementsByTagName("RegExpr").item(0);
  }

  private static Element named(Document xml, String tag, String name) {
    NodeList all = xml.getElementsByTagName(tag);
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.getAttribute("name").equals(name)) {
        return element;
      }
    }
    throw new AssertionError("no " + tag + " " + name);
  }
}
