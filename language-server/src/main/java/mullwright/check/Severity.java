package mullwright.check;

/** How bad a finding is. */
public enum Severity {
  ERROR,
  WARNING,
  INFORMATION
}
