package mullwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import mullwright.takeoff.nesting.NestingProblem;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;

/** Reads published cutting-stock instances and their known optima from text files. */
public final class CuttingStockFiles {
  private CuttingStockFiles() {}

  /**
   * One instance.
   *
   * @param family the file or folder it comes from
   * @param name its published name
   * @param optimum the known least cost
   */
  public record Instance(String family, String name, NestingProblem problem, long optimum) {}

  /** All instances of a folder that holds `optima.tsv`, `optima-orders.tsv` and their files. */
  public static List<Instance> folder(Path folder) {
    Map<String, Long> optima = new HashMap<>();
    optima(folder.resolve("optima.tsv"), 5, optima);
    optima(folder.resolve("optima-orders.tsv"), 5, optima);
    List<Instance> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".bpp")) {
          all.addAll(bpp(name.replace(".bpp", ""), Files.readString(file), optima));
        } else if (name.endsWith(".cut")) {
          all.addAll(cut(name.replace(".cut", ""), Files.readString(file), optima));
        } else if (name.endsWith(".txt") && optima.containsKey(name.replace(".txt", ""))) {
          String title = name.replace(".txt", "");
          String family =
              (title.contains("_DI_") ? "AI " : "ANI ") + title.substring(0, title.indexOf('_'));
          String text = Files.readString(file, StandardCharsets.ISO_8859_1);
          all.addAll(bpp(family, "'" + title + "'\n" + text, optima));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  private static void optima(Path file, int column, Map<String, Long> optima) {
    if (!Files.exists(file)) {
      return;
    }
    try {
      for (String line : Files.readAllLines(file).subList(1, Files.readAllLines(file).size())) {
        String[] fields = line.split("\t");
        optima.put(fields[1], Long.parseLong(fields[column]));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Instances with one stock: name in quotes, number of widths, capacity, widths and demands. */
  public static List<Instance> bpp(String family, String text, Map<String, Long> optima) {
    List<String> lines = text.lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
    List<Instance> all = new ArrayList<>();
    for (int at = 0; at < lines.size(); ) {
      String name = lines.get(at++).replace("'", "").strip();
      int types = Integer.parseInt(lines.get(at++));
      long capacity = Long.parseLong(lines.get(at++));
      List<Part> parts = new ArrayList<>();
      for (int i = 0; i < types; i++) {
        String[] fields = lines.get(at++).split("\\s+");
        parts.add(new Part(Long.parseLong(fields[0]), Integer.parseInt(fields[1])));
      }
      all.add(
          new Instance(
              family, name, NestingProblem.oneStock(capacity, parts, 0, 0), optima.get(name)));
    }
    return all;
  }

  /** Orders: keyword lines from `order NAME` to `end`. */
  public static List<Instance> cut(String family, String text, Map<String, Long> optima) {
    List<Instance> all = new ArrayList<>();
    Map<String, Long> numbers = new HashMap<>();
    List<Stock> stocks = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    String name = "";
    for (String line : text.lines().collect(Collectors.toList())) {
      String[] f = line.strip().split("\\s+");
      switch (f[0]) {
        case "order" -> {
          name = f[1];
          stocks.clear();
          parts.clear();
        }
        case "kerf", "trim", "maxpieces" -> numbers.put(f[0], Long.parseLong(f[1]));
        case "stock" ->
            stocks.add(
                new Stock(
                    Long.parseLong(f[1]),
                    Long.parseLong(f[2]),
                    f[3].equals("-") ? Stock.UNLIMITED : Integer.parseInt(f[3])));
        case "part" -> parts.add(new Part(Long.parseLong(f[1]), Integer.parseInt(f[2])));
        case "end" ->
            all.add(
                new Instance(
                    family,
                    name,
                    new NestingProblem(
                        stocks,
                        parts,
                        numbers.get("kerf"),
                        numbers.get("trim"),
                        numbers.get("maxpieces").intValue()),
                    optima.get(name)));
        default -> {
          // the unit and notes do not matter to the computation
        }
      }
    }
    return all;
  }
}
