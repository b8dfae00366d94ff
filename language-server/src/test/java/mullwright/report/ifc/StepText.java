package mullwright.report.ifc;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads an exchange structure by the grammar of ISO 10303-21 (clear text, one data section, simple
 * records), and refuses whatever the grammar does not allow.
 *
 * <p>A parameter is a {@link String} (with quotes taken off), {@link BigDecimal}, {@link Long},
 * {@link Ref}, {@link Word}, {@link Typed}, a {@link List}, or {@link Mark} for {@code $} and
 * {@code *}.
 */
public final class StepText {
  /** Parameters by entity name, in the order of the header. */
  public final Map<String, List<Object>> header = new LinkedHashMap<>();

  /** Instances by number, in the order of the text. */
  public final Map<Integer, Instance> data = new LinkedHashMap<>();

  private final String text;
  private int at;

  /** A data instance. */
  public record Instance(int number, String entity, List<Object> values) {}

  /** A reference to one. */
  public record Ref(int number) {}

  /** An element of an enumeration. */
  public record Word(String name) {}

  /** A value with its type. */
  public record Typed(String type, Object value) {}

  /** What is not given, and what the schema derives. */
  public enum Mark {
    OMITTED,
    DERIVED
  }

  /** Reads all of it. */
  public StepText(String text) {
    this.text = text;
    expect("ISO-10303-21;");
    expect("HEADER;");
    while (!sees("ENDSEC;")) {
      String entity = keyword();
      header.put(entity, list());
      expect(";");
    }
    expect("ENDSEC;");
    expect("DATA;");
    while (!sees("ENDSEC;")) {
      int number = ref().number();
      expect("=");
      Instance one = new Instance(number, keyword(), list());
      expect(";");
      if (number < 1 || data.put(number, one) != null) {
        throw wrong("instance #" + number + " stands twice or is no instance");
      }
    }
    expect("ENDSEC;");
    expect("END-ISO-10303-21;");
    blanks();
    if (at != text.length()) {
      throw wrong("something after the end");
    }
  }

  /** The instances of an entity. */
  public List<Instance> all(String entity) {
    return data.values().stream().filter(one -> one.entity().equals(entity)).toList();
  }

  /** The instance a reference leads to. */
  public Instance at(Object ref) {
    Instance found = data.get(((Ref) ref).number());
    if (found == null) {
      throw new AssertionError("nothing stands at " + ref);
    }
    return found;
  }

  private AssertionError wrong(String why) {
    int from = Math.max(0, at - 40);
    return new AssertionError(
        why + " at " + at + ": …" + text.substring(from, Math.min(text.length(), at + 40)));
  }

  private void blanks() {
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\n')) {
      at++;
    }
  }

  private boolean sees(String what) {
    blanks();
    return text.startsWith(what, at);
  }

  private void expect(String what) {
    if (!sees(what)) {
      throw wrong(what + " expected");
    }
    at += what.length();
  }

  private String keyword() {
    blanks();
    int from = at;
    while (upper(text.charAt(at)) || (at > from && digit(text.charAt(at)))) {
      at++;
    }
    if (at == from) {
      throw wrong("a name expected");
    }
    return text.substring(from, at);
  }

  private static boolean upper(char c) {
    return (c >= 'A' && c <= 'Z') || c == '_';
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }

  private Ref ref() {
    expect("#");
    int from = at;
    while (digit(text.charAt(at))) {
      at++;
    }
    return new Ref(Integer.parseInt(text.substring(from, at)));
  }

  private List<Object> list() {
    expect("(");
    List<Object> values = new ArrayList<>();
    while (!sees(")")) {
      if (!values.isEmpty()) {
        expect(",");
      }
      values.add(parameter());
    }
    expect(")");
    return values;
  }

  private Object parameter() {
    blanks();
    char first = text.charAt(at);
    if (first == '$' || first == '*') {
      at++;
      return first == '$' ? Mark.OMITTED : Mark.DERIVED;
    }
    if (first == '#') {
      return ref();
    }
    if (first == '(') {
      return list();
    }
    if (first == '\'') {
      return string();
    }
    if (first == '.') {
      at++;
      String name = keyword();
      expect(".");
      return new Word(name);
    }
    if (upper(first)) {
      String type = keyword();
      List<Object> inside = list();
      if (inside.size() != 1) {
        throw wrong("a typed value holds one value");
      }
      return new Typed(type, inside.get(0));
    }
    return number();
  }

  private Object number() {
    int from = at;
    if (text.charAt(at) == '+' || text.charAt(at) == '-') {
      at++;
    }
    int digits = at;
    while (digit(text.charAt(at))) {
      at++;
    }
    if (at == digits) {
      throw wrong("a number begins with a digit");
    }
    if (text.charAt(at) != '.') {
      return Long.parseLong(text.substring(from, at));
    }
    at++;
    while (digit(text.charAt(at))) {
      at++;
    }
    if (text.charAt(at) == 'E') {
      at++;
      if (text.charAt(at) == '+' || text.charAt(at) == '-') {
        at++;
      }
      while (digit(text.charAt(at))) {
        at++;
      }
    }
    return new BigDecimal(text.substring(from, at));
  }

  private String string() {
    at++;
    StringBuilder words = new StringBuilder();
    while (true) {
      char c = text.charAt(at++);
      if (c < ' ' || c > '~') {
        throw wrong("a character that is no printable ASCII");
      } else if (c == '\'') {
        if (text.charAt(at) != '\'') {
          return words.toString();
        }
        at++;
        words.append('\'');
      } else if (c != '\\') {
        words.append(c);
      } else {
        control(words);
      }
    }
  }

  private void control(StringBuilder words) {
    if (text.charAt(at) == '\\') {
      at++;
      words.append('\\');
      return;
    }
    boolean wide = text.startsWith("X4\\", at);
    if (!wide && !text.startsWith("X2\\", at)) {
      throw wrong("no control directive");
    }
    at += 3;
    int size = wide ? 8 : 4;
    while (!text.startsWith("\\X0\\", at)) {
      words.appendCodePoint(Integer.parseInt(text.substring(at, at + size), 16));
      at += size;
    }
    at += 4;
  }
}
