package mullwright.analysis.wind;

/** Terrain upwind of a building, by ASCE 7 section 26.7. */
public enum Exposure {
  /** Urban, suburban and wooded terrain. */
  B,
  /** Open terrain with scattered obstructions. */
  C,
  /** Flat, unobstructed areas and water surfaces. */
  D
}
