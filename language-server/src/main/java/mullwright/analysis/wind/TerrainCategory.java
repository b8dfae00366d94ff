package mullwright.analysis.wind;

/** Terrain categories of EN 1991-1-4 with roughness length and minimum height. */
public enum TerrainCategory {
  /** Sea or coast open to the sea. */
  ZERO(0.003, 1),
  /** Lakes, flat country without obstacles. */
  I(0.01, 1),
  /** Low vegetation and isolated obstacles. */
  II(0.05, 2),
  /** Suburbs, villages, permanent forest. */
  III(0.3, 5),
  /** Towns with a mean building height above 15 m. */
  IV(1.0, 10);

  private final double roughness;
  private final double leastHeight;

  TerrainCategory(double roughness, double leastHeight) {
    this.roughness = roughness;
    this.leastHeight = leastHeight;
  }

  /** Roughness length z₀ [m]. */
  double roughness() {
    return roughness;
  }

  /** Height z_min below which the wind is taken as there [m]. */
  double leastHeight() {
    return leastHeight;
  }
}
