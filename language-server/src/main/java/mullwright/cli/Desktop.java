package mullwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Asks the desktop to open an address, as its own tool for that does. */
final class Desktop {
  private Desktop() {}

  static void open(Shell shell, String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    List<String> command =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : List.of(system.contains("mac") ? "open" : "xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      Say.wrong(shell, "No browser could be opened from here. Open the address above yourself.");
    }
  }
}
