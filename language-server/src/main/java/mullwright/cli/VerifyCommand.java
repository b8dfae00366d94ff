package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import mullwright.report.ReleaseRecord;
import mullwright.workspace.DiskFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Proves that texts, results and files handed out are those of a release. */
@Command(
    name = "verify",
    description = {
      "Prove that the texts here and what follows from them are those of a release record.",
      "Everything is made anew from the texts and compared by hash. Of files and folders named after"
          + " the record it tells file by file whether they came from these texts: tickets, cutting"
          + " plans, lists and drawings as the commands write them."
    },
    mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {
  private final Shell shell;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record, *.release.json.")
  private String record;

  @Parameters(
      index = "1..*",
      paramLabel = "FILE",
      description = "Files handed out, or folders of them. With these the texts need not be here.")
  private List<String> handed = new ArrayList<>();

  @Option(
      names = "--root",
      paramLabel = "DIR",
      description =
          "Folder the paths in the record count from; else the nearest above the record that holds"
              + " the wall.")
  private String root;

  VerifyCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws CannotException {
    Path file = WallFinder.path(shell.directory(), record);
    ReleaseRecord then;
    try {
      then =
          ReleaseRecord.read(Files.readString(file, StandardCharsets.UTF_8))
              .orElseThrow(
                  () ->
                      new CannotException(
                          "“"
                              + record
                              + "” is no release record, or was changed after it was made."));
    } catch (IOException failed) {
      throw CannotException.unreadable(record, failed);
    }
    boolean known = handed.isEmpty() || new HandedOut(shell, then).tell(handed, file);
    Path top = root == null ? top(file, then.wall()) : WallFinder.path(shell.directory(), root);
    if (!Files.isRegularFile(top.resolve(then.wall()))) {
      if (!handed.isEmpty() && root == null) {
        shell
            .out()
            .println("The texts are not here, so the files are compared with the record alone.");
        return known ? Exit.CLEAN : Exit.FINDINGS;
      }
      throw new CannotException(
          "The wall “" + then.wall() + "” of the record is not below “" + top + "”; say --root.");
    }
    Releases releases = new Releases(shell, new DiskFiles(top), then.wall());
    List<String> given = new ArrayList<>(then.files().keySet());
    ReleaseRecord now = releases.record(then.as(), given);
    List<String> differences = then.differences(now);
    differences.forEach(words -> shell.out().println(words));
    if (differences.isEmpty()) {
      shell
          .out()
          .println(
              then.wall()
                  + ": texts, results and files are those released as "
                  + then.as()
                  + " by mullwright "
                  + then.program());
      return known ? Exit.CLEAN : Exit.FINDINGS;
    }
    if (!then.program().equals(now.program())) {
      shell
          .out()
          .println(
              "The release was made by mullwright "
                  + then.program()
                  + ", this is "
                  + now.program()
                  + ": results may differ for that alone.");
    }
    return Exit.FINDINGS;
  }

  private static Path top(Path record, String wall) {
    for (Path folder = record.getParent(); folder != null; folder = folder.getParent()) {
      if (Files.isRegularFile(folder.resolve(wall))) {
        return folder;
      }
    }
    return record.getParent();
  }

  /** Makes it. */
  @AutoService(CommandMaker.class)
  public static final class Maker implements CommandMaker {
    @Override
    public Callable<Integer> make(Shell shell) {
      return new VerifyCommand(shell);
    }
  }
}
