package mullwright.check;

import java.util.List;
import mullwright.model.Origin;

/** The usual edits that mend a finding. */
final class Fixes {
  private Fixes() {}

  /** Puts another word in the place of what stands there. */
  static Fix replace(Origin origin, String text) {
    return new Fix("Write " + text, List.of(new Fix.Edit(origin, text)));
  }
}
