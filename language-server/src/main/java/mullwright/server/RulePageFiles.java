package mullwright.server;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import mullwright.check.RulePage;
import mullwright.workspace.WholeFile;

/**
 * The pages of the rules as files, so that an editor can open the one a diagnostic leads to without
 * any network.
 *
 * <p>They lie in the user's own folder for what can be made again, so their addresses are the same
 * in every talk. An address is told at once; the file is written on a thread of its own, so nobody
 * waits for it. It comes into its place whole: two editors may write the same page. Where it cannot
 * be written, the link leads nowhere and nothing else fails.
 */
public final class RulePageFiles {
  private final Path folder;
  private final Set<String> written = new HashSet<>();
  private ExecutorService writer;
  private String address;

  /** In the folder of the user the program runs for. */
  public RulePageFiles() {
    this(UserFolder.path().resolve("rules"));
  }

  RulePageFiles(Path folder) {
    this.folder = folder;
  }

  /** The address of a rule's page. */
  public String address(String rule) {
    if (address == null) {
      address = Addresses.of(folder) + "/";
    }
    return address + rule + ".md";
  }

  /** Writes those pages, each once. */
  public void write(Set<String> rules) {
    for (String rule : rules) {
      if (written.add(rule)) {
        writer().execute(() -> write(rule));
      }
    }
  }

  private ExecutorService writer() {
    if (writer == null) {
      writer =
          Executors.newSingleThreadExecutor(
              task -> {
                Thread thread = new Thread(task, "mullwright-pages");
                thread.setDaemon(true);
                return thread;
              });
    }
    return writer;
  }

  private void write(String rule) {
    Optional<RulePage> carried = RulePage.find(rule);
    if (carried.isEmpty()) {
      return;
    }
    byte[] page = carried.get().withFixtures().getBytes(StandardCharsets.UTF_8);
    Path file = folder.resolve(rule + ".md");
    try {
      boolean same = Files.exists(file) && Arrays.equals(Files.readAllBytes(file), page);
      if (!same) {
        Files.createDirectories(folder);
        WholeFile.put(file, whole -> Files.write(whole, page));
      }
    } catch (IOException unwritable) {
      // a link that leads nowhere; the rule's page can still be shown by command
    }
  }
}
