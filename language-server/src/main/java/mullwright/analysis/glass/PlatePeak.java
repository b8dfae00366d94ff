package mullwright.analysis.glass;

/**
 * Finds the largest principal stress on the tension face and where it is.
 *
 * @param stress largest principal stress σ·ab/(E t²)
 * @param along its place along the long side, 0 at the centre, 1 at the edge
 * @param across its place along the short side
 */
record PlatePeak(double stress, double along, double across) {
  private static final int COARSE = 25;
  private static final int FINE = 9;
  private static final double[] PLACES = places();
  private static final PlateStress.Table ALONG = PlateStress.Table.along(PLACES);
  private static final PlateStress.Table ACROSS = PlateStress.Table.across(PLACES);

  /** Searches a grid that is denser towards the corner, then twice around the best place. */
  static PlatePeak of(PlateState state) {
    PlatePeak best = best(state, PLACES, PLACES, ALONG, ACROSS);
    double reach = 0.06;
    for (int round = 0; round < 2; round++) {
      double[] alongPlaces = around(best.along(), reach);
      double[] acrossPlaces = around(best.across(), reach);
      PlatePeak closer =
          best(
              state,
              alongPlaces,
              acrossPlaces,
              PlateStress.Table.along(alongPlaces),
              PlateStress.Table.across(acrossPlaces));
      best = closer.stress() > best.stress() ? closer : best;
      reach /= 4;
    }
    return best;
  }

  private static PlatePeak best(
      PlateState state,
      double[] alongPlaces,
      double[] acrossPlaces,
      PlateStress.Table along,
      PlateStress.Table across) {
    Largest largest = new Largest();
    new PlateStress(state, along, across).visit(largest);
    return new PlatePeak(largest.stress, alongPlaces[largest.along], acrossPlaces[largest.across]);
  }

  /** Keeps the largest stress, the first of equal ones. */
  private static final class Largest implements PlateStress.Visitor {
    private double stress = Double.NEGATIVE_INFINITY;
    private int along;
    private int across;

    @Override
    public void at(int placeAlong, int placeAcross, double first, double second) {
      if (first > stress) {
        stress = first;
        along = placeAlong;
        across = placeAcross;
      }
    }
  }

  private static double[] places() {
    double[] places = new double[COARSE];
    for (int i = 0; i < COARSE; i++) {
      double even = i / (double) (COARSE - 1);
      places[i] = even * (1.5 - 0.5 * even);
    }
    return places;
  }

  private static double[] around(double centre, double reach) {
    double[] places = new double[FINE];
    for (int i = 0; i < FINE; i++) {
      double place = centre + reach * (2.0 * i / (FINE - 1) - 1);
      places[i] = Math.min(1, Math.abs(place));
    }
    return places;
  }
}
