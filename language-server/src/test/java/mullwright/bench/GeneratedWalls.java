package mullwright.bench;

import java.util.Locale;

/** Writes long wall texts for measurements: many small walls in one file, or one huge one. */
public final class GeneratedWalls {
  /** So many walls have a mistake: their splice cannot move as far as it must. */
  private static final int WRONG = 20;

  private GeneratedWalls() {}

  /** A file of so many lines or a few less: project, then walls of some fifty lines each. */
  static String file(int lines) {
    StringBuilder text = new StringBuilder(HEAD);
    int written = HEAD.split("\n").length;
    int length = wall(0).split("\n").length;
    for (int i = 0; written + length <= lines; i++) {
      text.append(wall(i));
      written += length;
    }
    return text.toString();
  }

  /** A text with its one wall told so many times, each under a name of its own. */
  public static String times(int count, String text) {
    int wall = text.indexOf("\nwall ") + 1;
    int name = wall + "wall ".length();
    int after = text.indexOf(' ', name);
    StringBuilder all = new StringBuilder(text.substring(0, wall));
    for (int i = 0; i < count; i++) {
      all.append("wall ").append(text, name, after).append(i).append(text.substring(after));
      all.append('\n');
    }
    return all.toString();
  }

  /**
   * The tower of the examples with so many floors and bays in place of its twelve and twenty, and
   * with a statement for each of {@link LocalEdit#ALL}.
   *
   * @param text of the tower
   * @param floors at least 12
   * @param bays at least 20
   */
  public static String tower(String text, int floors, int bays) {
    String larger =
        text.replaceAll("\\bL12\\b", "L" + floors)
            .replace("11 @ 13'", floors - 1 + " @ 13'")
            .replace("spaced 20 @", "spaced " + bays + " @")
            .replaceAll("\\b2\\.\\.20\\b", "2.." + bays)
            .replaceAll("\\b21\\b", Integer.toString(bays + 1));
    for (LocalEdit edit : LocalEdit.ALL) {
      int block = larger.indexOf("  " + edit.block() + " {\n");
      int end = larger.indexOf("\n  }\n", block) + 1;
      larger = larger.substring(0, end) + "    " + edit.one() + "\n" + larger.substring(end);
    }
    return larger;
  }

  /** A JSON text of so many lines or a few less, for a peer. */
  static String json(int lines) {
    StringBuilder text = new StringBuilder("[\n");
    for (int i = 0; 4 * (i + 1) + 2 <= lines; i++) {
      text.append(i == 0 ? "" : ",\n").append("  {\n");
      text.append("    \"name\": \"W").append(i).append("\",\n");
      text.append("    \"number\": ").append(i % 10).append("\n  }");
    }
    return text.append("\n]\n").toString();
  }

  private static String wall(int number) {
    String width = (4 + number % 2) + "'-" + (number % 8) + "\"";
    String gap = number < WRONG ? "1/4\"" : "5/8\"";
    return String.format(Locale.ROOT, WALL, number, width, gap);
  }

  private static final String HEAD =
      """
      use "../catalog/captured.wall"

      project "Quillon Row Offices" {
        revision A
        units inches
        criteria {
          wind service
          wind field  24 psf in, 26 psf out
          wind edge   24 psf in, 34 psf out within 5'-0" of ends
          metal temperature -10 F to 150 F, set at 60 F
          slab deflection 3/8"
          story drift 5/8"
          exposure outdoor
        }
      }
      """;

  private static final String WALL =
      """

      /// Elevation number %1$d.
      wall W%1$d {
        system captured-6
        finish bronze outside, clear inside

        grid {
          lines A..G  spaced 6 @ %2$s              // all bays alike
          floor L1    at 0"      slab 6"
          floor L2    at 13'-0"  slab 10"
          floor Roof  at 26'-0"  slab 10"
          row   sill  at 2"     above L1
          row   R1    at 3'-0"  above L1
          row   R2    at 9'-6"  above L1
          row   R3    at 1'-6"  below L2
          row   R4    at 3'-0"  above L2
          row   R5    at 9'-6"  above L2
          row   head  at 4"     above Roof
          opening door D1  bays C..D  from L1 to R2  by others  clear 1/4"
        }

        members {
          vertical   A, G        as jamb
          vertical   B..F        as mullion
          horizontal sill..head
          splice     B..F        at 2'-0" above L2  gap %3$s
          reinforce  B, C        with bar-5  from 1'-0" above L1 to 1'-0" below L2  isolated by nylon-pad
        }

        anchors {
          clip      all   at sill
          dead-load B..F {
            at L2, Roof
            part angle-6
            bolted 2 x hex-half
            isolated by bituminous-paint
          }
          dead-load A, G {
            at L2
            part angle-6
            bolted 2 x hex-half
            isolated by bituminous-paint
            spread by plate-spread-6
          }
          wind-load A, G  at Roof  part slot-6  bolted 2 x hex-half  isolated by nylon-pad  spread by plate-spread-6
        }

        lites {
          spandrel S1  all
          spandrel S2  rows sill..R1
          vision   V1  rows R1..R2, R4..R5
          vision   V2  rows R1..R2  bays B..C, D..E
          vision   V2  rows sill..R1  bays A..C, D..E
        }

        installation {
          ladder A..C
          stick  C..G
        }
      }
      """;
}
