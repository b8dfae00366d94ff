package mullwright.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import mullwright.report.kept.KeptTexts;

/** Names this build of the program. */
final class Program {
  private Program() {}

  /** The version it was built as. */
  static String version() {
    String built = Program.class.getPackage().getImplementationVersion();
    return built == null ? "of no release" : built;
  }

  /** The version with a hash of the jar, so that two builds of one version have two names. */
  static String identity(KeptTexts texts) throws CannotException {
    try {
      Path jar = Path.of(Program.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (!Files.isRegularFile(jar)) {
        return version();
      }
      return version() + " " + texts.hash(jar);
    } catch (IOException | URISyntaxException unreadable) {
      throw new CannotException("The program's own jar cannot be read: " + unreadable + ".");
    }
  }
}
