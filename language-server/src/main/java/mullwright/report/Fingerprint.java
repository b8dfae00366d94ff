package mullwright.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import mullwright.check.Finding;

/**
 * Names findings so that the same one is known again after the text above it changed: by rule, file
 * and piece, whatever the line and the numbers; by its words where it is about the text itself.
 * Equal ones are counted through in the order of the text.
 */
public final class Fingerprint {
  private static final int DIGITS = 32;

  private final Map<String, Integer> seen = new HashMap<>();

  /** The name of the next finding; ask in the order of the text. */
  public String next(Finding finding) {
    String what = finding.piece().isEmpty() ? finding.what() : finding.piece();
    String key = finding.rule() + "\n" + finding.origin().file() + "\n" + what;
    int count = seen.merge(key, 1, Integer::sum);
    return hash(key + "\n" + count).substring(0, DIGITS);
  }

  /** SHA-256 of a text, in hexadecimal digits. */
  public static String hash(String text) {
    return hash(text.getBytes(StandardCharsets.UTF_8));
  }

  /** SHA-256 of bytes, in hexadecimal digits. */
  public static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException absent) {
      // every Java has it
      throw new IllegalStateException(absent);
    }
  }
}
