package mullwright.drawing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;

/** Runs programs that know nothing of this one, where they are installed. */
public record OtherPrograms(Path folder) {
  private static final int MINUTES = 5;

  /** How it ended and what it said. */
  public record Ran(int code, String out) {}

  /** Runs it; what it says on either stream. */
  public Ran run(String... command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(Arrays.asList(command));
    builder.directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().put("QT_QPA_PLATFORM", "offscreen");
    Path said = folder.resolve("said.txt");
    builder.redirectOutput(said.toFile());
    Process process = builder.start();
    process.getOutputStream().close();
    if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError(String.join(" ", command) + " did not end");
    }
    return new Ran(process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
  }

  /** True if it runs here and ends well. */
  public boolean there(String... command) throws InterruptedException {
    try {
      return run(command).code() == 0;
    } catch (IOException missing) {
      return false;
    }
  }

  /**
   * What a reader of exchange files says of one: its version, how many errors it finds, how much it
   * had to mend, how many blocks are placed. Skips the test where there is no such reader.
   */
  public String audit(Path file) throws IOException, InterruptedException {
    String python = Files.exists(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";
    assumeTrue(
        there(python, "-c", "import ezdxf"),
        "skipped: no ezdxf here; Debian's package is python3-ezdxf");
    return run(
            python,
            "-c",
            "import ezdxf, sys\n"
                + "doc = ezdxf.readfile(sys.argv[1])\n"
                + "audit = doc.audit()\n"
                + "print(doc.dxfversion, len(audit.errors), len(audit.fixes),"
                + " len(doc.modelspace().query('INSERT')))",
            file.toString())
        .out()
        .strip();
  }
}
