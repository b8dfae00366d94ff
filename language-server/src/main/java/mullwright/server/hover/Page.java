package mullwright.server.hover;

import java.util.ArrayList;
import java.util.List;

/** A small page of text: a title, lines, facts, and lines of working. */
public final class Page {
  private final List<Part> parts = new ArrayList<>();

  private enum Kind {
    TITLE,
    LINE,
    FACT,
    WORKING
  }

  private record Part(Kind kind, String name, String text) {}

  /** A page with that title. */
  public Page(String title) {
    parts.add(new Part(Kind.TITLE, "", title));
  }

  /** Adds a line of prose. */
  public Page line(String text) {
    if (!text.isBlank()) {
      parts.add(new Part(Kind.LINE, "", text));
    }
    return this;
  }

  /** Adds a fact: its name and what it is. */
  public Page fact(String name, String what) {
    parts.add(new Part(Kind.FACT, name, what));
    return this;
  }

  /** Adds lines of working, told as they are. */
  public Page working(List<String> lines) {
    if (!lines.isEmpty()) {
      parts.add(new Part(Kind.WORKING, "", String.join("\n", lines)));
    }
    return this;
  }

  /** Adds all of another page under this one. */
  public Page and(Page other) {
    parts.addAll(other.parts);
    return this;
  }

  /** The page in Markdown. */
  public String markdown() {
    StringBuilder text = new StringBuilder();
    Kind last = null;
    for (Part part : parts) {
      boolean list = part.kind == Kind.FACT && last == Kind.FACT;
      text.append(text.length() == 0 ? "" : list ? "\n" : "\n\n");
      switch (part.kind) {
        case TITLE -> text.append("**").append(escaped(part.text)).append("**");
        case LINE -> text.append(escaped(part.text));
        case FACT ->
            text.append("- ").append(escaped(part.name)).append(": ").append(escaped(part.text));
        case WORKING -> text.append("```text\n").append(part.text).append("\n```");
      }
      last = part.kind;
    }
    return text.toString();
  }

  /** The page as plain text. */
  public String plain() {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      text.append(text.length() == 0 ? "" : "\n");
      switch (part.kind) {
        case TITLE, LINE, WORKING -> text.append(part.text);
        case FACT -> text.append(part.name).append(": ").append(part.text);
      }
    }
    return text.toString();
  }

  /** Text that Markdown shows as it is. */
  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ("\\`*_<>[]#|~".indexOf(c) >= 0) {
        escaped.append('\\');
      }
      escaped.append(c);
    }
    return escaped.toString();
  }
}
