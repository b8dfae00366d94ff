package mullwright.report;

import mullwright.check.Severity;

/** Colours on a terminal, or none at all. Colour never says what the words do not say as well. */
public record Paint(boolean on) {
  /** Plain text. */
  public static final Paint NONE = new Paint(false);

  String bold(String text) {
    return with("1", text);
  }

  String dim(String text) {
    return with("2", text);
  }

  String severity(Severity severity, String text) {
    return with(
        switch (severity) {
          case ERROR -> "1;31";
          case WARNING -> "1;33";
          case INFORMATION -> "1;36";
        },
        text);
  }

  private String with(String code, String text) {
    return on && !text.isEmpty() ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
  }
}
