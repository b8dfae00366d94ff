package mullwright.report;

import java.util.Optional;

/** What earlier checks found in files, for as long as nothing it hangs on changes. */
public interface KeptParts {
  /** What was found in a file as it stands. */
  Optional<CheckPart> get(String path);

  /** Keeps it, unless a rule broke while it was made. */
  void put(CheckPart part);
}
