package mullwright.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A size of paper, lying. Source: ISO 216 (A sizes), ASME Y14.1 (ANSI sizes), both from memory;
 * architects' sizes are common practice in the US.
 *
 * @param width the longer side [mm]
 * @param height the shorter side [mm]
 */
public record Paper(String name, double width, double height) {
  private static final double INCH = 25.4;

  /** Those that can be asked for, from small to large in each series. */
  public static final List<Paper> ALL =
      List.of(
          new Paper("A4", 297, 210),
          new Paper("A3", 420, 297),
          new Paper("A2", 594, 420),
          new Paper("A1", 841, 594),
          new Paper("A0", 1189, 841),
          inches("ANSI-A", 11, 8.5),
          inches("ANSI-B", 17, 11),
          inches("ANSI-C", 22, 17),
          inches("ANSI-D", 34, 22),
          inches("ANSI-E", 44, 34),
          inches("ARCH-A", 12, 9),
          inches("ARCH-B", 18, 12),
          inches("ARCH-C", 24, 18),
          inches("ARCH-D", 36, 24),
          inches("ARCH-E", 48, 36));

  private static Paper inches(String name, double width, double height) {
    return new Paper(name, width * INCH, height * INCH);
  }

  /** By its name in any case, {@code a3} or {@code ansi-d}. */
  public static Optional<Paper> named(String name) {
    String wanted = name.strip().toUpperCase(Locale.ROOT).replace(' ', '-');
    return ALL.stream().filter(paper -> paper.name.equals(wanted)).findFirst();
  }
}
