package mullwright.analysis.glass;

/** Heat treatment of a lite, the kinds ASTM E1300 knows. */
public enum HeatTreatment {
  /** Float glass as it leaves the line. */
  ANNEALED,
  /** Surface compression between that of annealed and fully tempered glass (ASTM C1048). */
  HEAT_STRENGTHENED,
  /** Surface compression high enough that it breaks into small pieces (ASTM C1048). */
  FULLY_TEMPERED
}
