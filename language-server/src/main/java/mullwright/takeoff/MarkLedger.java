package mullwright.takeoff;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.layout.PieceMarks;

/**
 * The marks that have been issued, kept from one revision to the next.
 *
 * <p>A line for each mark, sorted: the mark, a print of what the piece is, and words for people. A
 * mark is made from the print of its piece, not counted: so a change in one bay renumbers nothing
 * else, two branches that add the same piece give it the same mark, and lines of different pieces
 * seldom stand side by side, which lets git merge the file. A line stays when its piece is gone, so
 * no mark is ever given to another piece; a piece that comes back has its mark again.
 */
public final class MarkLedger {
  /** What a ledger begins with. */
  public static final String HEAD =
      "# Marks issued. One line a mark; lines are never taken out, so no mark is used twice.\n";

  // without what is taken for another: 0 and O, 1 and I
  private static final String SIGNS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
  private static final int SIGNS_IN_A_MARK = 4;
  private static final int BITS = 5;
  private static final int PRINT = 20;

  /**
   * A line that cannot be right.
   *
   * @param line counted from 1
   * @param sentence what is wrong and how to mend it
   */
  public record Fault(int line, String sentence) {}

  private record Issued(String mark, String words) {}

  private final Map<String, Issued> byPrint = new HashMap<>();
  private final Map<String, String> byMark = new TreeMap<>();
  private final List<Fault> faults = new ArrayList<>();
  private final List<String> fresh = new ArrayList<>();

  private MarkLedger() {}

  /**
   * Reads a ledger.
   *
   * @param text of the file; empty for one that is not there yet
   */
  public static MarkLedger read(String text) {
    MarkLedger ledger = new MarkLedger();
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        ledger.take(line, i + 1);
      }
    }
    return ledger;
  }

  private void take(String line, int number) {
    String[] parts = line.split("\\s+", 3);
    if (parts.length < 2 || !parts[1].matches("[0-9a-f]{" + PRINT + "}")) {
      faults.add(
          new Fault(
              number,
              "“"
                  + line
                  + "” is no line of a ledger: it needs a mark and a print. Merge it anew."));
      return;
    }
    String known = byMark.putIfAbsent(parts[0], parts[1]);
    if (known != null && !known.equals(parts[1])) {
      faults.add(
          new Fault(
              number,
              "The mark "
                  + parts[0]
                  + " is given to two pieces. Take out the line that was issued later; its piece"
                  + " gets another mark."));
      return;
    }
    byPrint.putIfAbsent(parts[1], new Issued(parts[0], parts.length > 2 ? parts[2] : ""));
  }

  /** Lines that cannot be right, in their order. */
  public List<Fault> faults() {
    return List.copyOf(faults);
  }

  /** Marks handed out that were not in the ledger, in the order asked for. */
  public List<String> fresh() {
    return List.copyOf(fresh);
  }

  /** True if the mark has been issued. */
  public boolean has(String mark) {
    return byMark.containsKey(mark);
  }

  /**
   * Hands out the marks of a wall; one that is not known yet is issued.
   *
   * @param finish of the wall, which is part of what a bar is
   */
  public PieceMarks.Source source(String finish) {
    return (letter, form) -> mark(letter, form, finish);
  }

  private String mark(String letter, String form, String finish) {
    String whole = letter + " " + form + (letter.equals("G") ? "" : " " + finish);
    String print = print(whole);
    Issued issued = byPrint.get(print);
    if (issued == null) {
      issued = new Issued(free(letter, whole), words(form));
      byPrint.put(print, issued);
      byMark.put(issued.mark(), print);
      fresh.add(issued.mark());
    }
    return issued.mark();
  }

  // the first made from the form that nobody has
  private String free(String letter, String whole) {
    for (int again = 0; ; again++) {
      byte[] digest = digest(whole + " #" + again);
      StringBuilder mark = new StringBuilder(letter).append('-');
      for (int i = 0; i < SIGNS_IN_A_MARK; i++) {
        mark.append(SIGNS.charAt(digest[i] & ((1 << BITS) - 1)));
      }
      if (!byMark.containsKey(mark.toString())) {
        return mark.toString();
      }
    }
  }

  // kind and part: what a reader of the ledger needs to know it by
  private static String words(String form) {
    String[] parts = form.split(" ");
    return parts[0].toLowerCase(Locale.ROOT) + " " + (parts.length > 1 ? parts[1] : "");
  }

  private static String print(String whole) {
    StringBuilder print = new StringBuilder();
    for (byte each : digest(whole)) {
      print
          .append(Character.forDigit(each >> 4 & 15, 16))
          .append(Character.forDigit(each & 15, 16));
    }
    return print.substring(0, PRINT);
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }

  /** The ledger as it is written: sorted by mark, the same for the same marks. */
  public String write() {
    StringBuilder text = new StringBuilder(HEAD);
    byMark.forEach(
        (mark, print) -> {
          String words =
              Optional.ofNullable(byPrint.get(print))
                  .filter(issued -> issued.mark().equals(mark))
                  .map(Issued::words)
                  .orElse("");
          text.append((mark + "  " + print + "  " + words).strip()).append('\n');
        });
    return text.toString();
  }
}
