package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Workbooks as a spreadsheet program reads them: every cell is what the same report says as
 * comma-separated values. Skipped where LibreOffice is not installed.
 */
class WorkbookTest {
  private static final int MINUTES = 5;

  /** Commas, quotes, UTF-8, cells as shown off, every sheet into a file of its own. */
  private static final String EACH_SHEET =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

  private static final MathContext DIGITS = new MathContext(15);
  private static final int LEADING = 3;
  private static final int NAME_LIMIT = 31;

  @TempDir Path folder;

  private static byte[] run(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Shell shell =
        new Shell(
            InputStream.nullInputStream(),
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8),
            Path.of("..", "examples"),
            Map.of(),
            false);
    assertThat(CommandRun.run(shell, arguments)).isEqualTo(Exit.CLEAN);
    shell.out().flush();
    return out.toByteArray();
  }

  private int office(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("soffice", "--headless"));
    command.add("-env:UserInstallation=" + folder.resolve("profile").toUri());
    command.addAll(arguments);
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    process.getOutputStream().close();
    if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("LibreOffice did not end");
    }
    return process.exitValue();
  }

  private boolean isThere() throws InterruptedException {
    try {
      return office(List.of("--version")) == 0;
    } catch (IOException missing) {
      return false;
    }
  }

  @Test
  void everyCellIsReadAsItIsSaidElsewhere() throws IOException, InterruptedException {
    assumeTrue(isThere(), "skipped: no LibreOffice here; Debian: libreoffice-calc-nogui");
    Map<String, String> said = new LinkedHashMap<>();
    List<String> convert = new ArrayList<>(List.of("--convert-to", EACH_SHEET, "--outdir", "read"));
    for (String wall :
        new String[] {"ferry-terminal/east.wall", "library-corner/reading-room.wall"}) {
      for (String report : new String[] {"takeoff", "cut", "tickets", "glass", "sequence"}) {
        String book = report + "-" + wall.replaceAll(".*/|\\.wall", "");
        Files.write(folder.resolve(book + ".xlsx"), run(report, wall, "--output", "xlsx"));
        said.put(book, new String(run(report, wall, "--output", "csv"), StandardCharsets.UTF_8));
        convert.add(book + ".xlsx");
      }
    }
    assertThat(office(convert)).as(Files.readString(folder.resolve("said.txt"))).isZero();
    int cells = 0;
    for (Map.Entry<String, String> book : said.entrySet()) {
      for (String block : book.getValue().split("\r\n\r\n")) {
        cells += compare(book.getKey(), rows(block));
      }
    }
    assertThat(cells).isGreaterThan(3_000);
    try (Stream<Path> read = Files.list(folder.resolve("read"))) {
      for (Path sheet : read.toList()) {
        assertThat(Files.readString(sheet)).doesNotContain("Err:", "#REF", "#NAME", "#VALUE");
      }
    }
  }

  /** Compares a table with its sheet; how many cells that were. */
  private int compare(String book, List<List<String>> table) throws IOException {
    String wall = table.get(1).get(1);
    String name = wall + " " + table.get(1).get(2);
    Path file =
        folder
            .resolve("read")
            .resolve(book + "-" + name.substring(0, Math.min(NAME_LIMIT, name.length())) + ".csv");
    List<List<String>> sheet = rows(Files.readString(file).replaceFirst("^\ufeff", ""));
    // a line of headings each; a sheet may have a line of totals below
    assertThat(sheet.size()).as(file.toString()).isBetween(table.size(), table.size() + 1);
    int cells = 0;
    for (int row = 1; row < table.size(); row++) {
      List<String> said = table.get(row).subList(LEADING, table.get(row).size());
      List<String> read = sheet.get(row);
      for (int at = 0; at < said.size(); at++) {
        String where = file.getFileName() + " " + sheet.get(0) + ", row " + row + ", cell " + at;
        String cell = at < read.size() ? read.get(at) : "";
        if (!same(said.get(at), cell)) {
          assertThat(cell).as(where).isEqualTo(said.get(at));
        }
        cells++;
      }
    }
    return cells;
  }

  private static boolean same(String said, String read) {
    String number = "-?[0-9]+(\\.[0-9]+)?";
    return said.equals(read)
        || said.matches(number)
            && read.matches(number)
            // a spreadsheet's numbers have fifteen digits
            && new BigDecimal(said).round(DIGITS).compareTo(new BigDecimal(read).round(DIGITS))
                == 0;
  }

  /** Rows of comma-separated values (RFC 4180). */
  private static List<List<String>> rows(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int at = 0; at < text.length(); at++) {
      char next = text.charAt(at);
      if (quoted && next == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
        cell.append(next);
        at++;
      } else if (next == '"') {
        quoted = !quoted;
      } else if (!quoted && (next == ',' || next == '\n')) {
        row.add(cell.toString());
        cell.setLength(0);
        if (next == '\n') {
          rows.add(row);
          row = new ArrayList<>();
        }
      } else if (quoted || next != '\r') {
        cell.append(next);
      }
    }
    if (cell.length() > 0 || !row.isEmpty()) {
      row.add(cell.toString());
      rows.add(row);
    }
    return rows;
  }
}
