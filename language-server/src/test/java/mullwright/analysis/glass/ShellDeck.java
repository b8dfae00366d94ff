package mullwright.analysis.glass;

import java.util.Locale;

/**
 * Writes the input deck of a quarter of a glass lite for the finite element program CalculiX.
 *
 * <p>The lite is meshed with eight-node reduced-integration shells (S8R). Symmetry holds on x = 0
 * and y = 0; the two outer edges are held normal to the glass and kept from twisting along
 * themselves, as thin-plate theory has it, and may turn, slip and pull in, as {@link
 * LargeDeflectionPlate} assumes. Elements are finer towards the corner, where the stress of a
 * strongly loaded lite peaks.
 *
 * @param name name of the deck
 * @param longSide long side of the whole lite [m]
 * @param shortSide short side of the whole lite [m]
 * @param thickness thickness [m]
 * @param pressure uniform pressure [Pa]
 */
record ShellDeck(
    String name, double longSide, double shortSide, double thickness, double pressure) {

  /** Elements along each side of the quarter. */
  static final int ELEMENTS = 14;

  static final int NODES = 2 * ELEMENTS + 1;

  /** The deck as text, the same bytes on every machine. */
  String text() {
    StringBuilder deck = new StringBuilder(32_000);
    line(deck, "** quarter of a lite %s, simply supported, edges free to pull in", name);
    line(
        deck,
        "** whole lite %s x %s x %s m, pressure %s Pa",
        longSide,
        shortSide,
        thickness,
        pressure);
    line(deck, "*NODE, NSET=NALL");
    for (int j = 0; j < NODES; j++) {
      for (int i = 0; i < NODES; i++) {
        if (i % 2 == 0 || j % 2 == 0) {
          line(
              deck,
              "%d, %.6f, %.6f, 0",
              number(i, j),
              longSide / 2 * graded(i),
              shortSide / 2 * graded(j));
        }
      }
    }
    line(deck, "*ELEMENT, TYPE=S8R, ELSET=EALL");
    for (int j = 0; j < ELEMENTS; j++) {
      for (int i = 0; i < ELEMENTS; i++) {
        int x = 2 * i;
        int y = 2 * j;
        line(
            deck,
            "%d, %d, %d, %d, %d, %d, %d, %d, %d",
            1 + i + j * ELEMENTS,
            number(x, y),
            number(x + 2, y),
            number(x + 2, y + 2),
            number(x, y + 2),
            number(x + 1, y),
            number(x + 2, y + 1),
            number(x + 1, y + 2),
            number(x, y + 1));
      }
    }
    set(deck, "MIDX", true, 0);
    set(deck, "MIDY", false, 0);
    set(deck, "EDGEX", true, NODES - 1);
    set(deck, "EDGEY", false, NODES - 1);
    line(deck, "*NSET, NSET=CENTRE");
    line(deck, "%d", number(0, 0));
    line(deck, "*MATERIAL, NAME=GLASS");
    line(deck, "*ELASTIC");
    line(deck, "71.7E9, 0.22");
    line(deck, "*SHELL SECTION, ELSET=EALL, MATERIAL=GLASS");
    line(deck, "%s", thickness);
    line(deck, "*BOUNDARY");
    line(deck, "MIDX, 1, 1");
    line(deck, "MIDX, 5, 5");
    line(deck, "MIDY, 2, 2");
    line(deck, "MIDY, 4, 4");
    line(deck, "EDGEX, 3, 3");
    line(deck, "EDGEX, 4, 4");
    line(deck, "EDGEY, 3, 3");
    line(deck, "EDGEY, 5, 5");
    line(deck, "*STEP, NLGEOM, INC=200");
    line(deck, "*STATIC");
    line(deck, "0.1, 1., 1E-4, 0.25");
    line(deck, "*DLOAD");
    line(deck, "EALL, P, %s", pressure);
    line(deck, "*NODE PRINT, NSET=CENTRE");
    line(deck, "U");
    line(deck, "*NODE FILE, OUTPUT=3D, FREQUENCY=1000");
    line(deck, "U");
    line(deck, "*EL FILE, OUTPUT=3D, FREQUENCY=1000");
    line(deck, "S");
    line(deck, "*END STEP");
    return deck.toString();
  }

  /** Place of a row of nodes, 0 at the middle and 1 at the edge of the lite. */
  static double graded(int i) {
    double even = i / (double) (NODES - 1);
    return even * (1.5 - 0.5 * even);
  }

  private static int number(int i, int j) {
    return 1 + i + j * NODES;
  }

  private static void set(StringBuilder deck, String name, boolean alongY, int fixed) {
    line(deck, "*NSET, NSET=%s", name);
    for (int k = 0; k < NODES; k++) {
      line(deck, "%d,", alongY ? number(fixed, k) : number(k, fixed));
    }
  }

  private static void line(StringBuilder deck, String format, Object... values) {
    deck.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
