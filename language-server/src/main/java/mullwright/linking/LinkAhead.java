package mullwright.linking;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Links the classes of one package tree in a jar ahead; the rest of the jar stays as it is. */
public final class LinkAhead {
  private static final String CLASS = ".class";
  private static final String SERVICES = "META-INF/services/";

  private LinkAhead() {}

  /**
   * @param args the jar, and the folder in it whose classes are meant ({@code mullwright/})
   * @throws IOException if the jar cannot be read or written; it is then as it was
   */
  public static void main(String[] args) throws IOException {
    jar(Path.of(args[0]), args[1]);
  }

  /**
   * Links a jar's classes ahead; the jar is replaced when the new one is whole. Entries keep their
   * order and their times, so the same jar gives the same bytes.
   *
   * @throws IOException if the jar cannot be read or written; it is then as it was
   */
  static void jar(Path jar, String folder) throws IOException {
    Path unfinished = jar.resolveSibling(jar.getFileName() + ".unfinished");
    try (ZipFile from = new ZipFile(jar.toFile());
        ZipOutputStream into =
            new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(unfinished)))) {
      LinkedClasses linked =
          new LinkedClasses(classes(from, folder), new Services(providers(from, folder)));
      for (Enumeration<? extends ZipEntry> all = from.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        Map<String, byte[]> instead = linked.instead(className(entry.getName()));
        if (instead.isEmpty()) {
          put(into, entry.getName(), entry, bytes(from, entry));
        } else {
          for (Map.Entry<String, byte[]> one : instead.entrySet()) {
            put(into, one.getKey() + CLASS, entry, one.getValue());
          }
        }
      }
    }
    Files.move(unfinished, jar, StandardCopyOption.REPLACE_EXISTING);
  }

  private static Map<String, byte[]> classes(ZipFile jar, String folder) throws IOException {
    Map<String, byte[]> classes = new LinkedHashMap<>();
    for (Enumeration<? extends ZipEntry> all = jar.entries(); all.hasMoreElements(); ) {
      ZipEntry entry = all.nextElement();
      if (entry.getName().startsWith(folder) && entry.getName().endsWith(CLASS)) {
        classes.put(className(entry.getName()), bytes(jar, entry));
      }
    }
    return classes;
  }

  /** What the jar lists for each service of that folder, by internal names. */
  private static Map<String, List<String>> providers(ZipFile jar, String folder)
      throws IOException {
    Map<String, List<String>> providers = new LinkedHashMap<>();
    for (Enumeration<? extends ZipEntry> all = jar.entries(); all.hasMoreElements(); ) {
      ZipEntry entry = all.nextElement();
      if (entry.getName().startsWith(SERVICES) && !entry.isDirectory()) {
        String service = entry.getName().substring(SERVICES.length()).replace('.', '/');
        if (service.startsWith(folder)) {
          String listed = new String(bytes(jar, entry), StandardCharsets.UTF_8);
          providers.put(
              service,
              listed
                  .lines()
                  .map(line -> line.replaceFirst("#.*", "").strip().replace('.', '/'))
                  .filter(line -> !line.isEmpty())
                  .toList());
        }
      }
    }
    return providers;
  }

  private static String className(String entry) {
    return entry.endsWith(CLASS) ? entry.substring(0, entry.length() - CLASS.length()) : entry;
  }

  private static byte[] bytes(ZipFile jar, ZipEntry entry) throws IOException {
    try (InputStream in = jar.getInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  private static void put(ZipOutputStream into, String name, ZipEntry like, byte[] bytes)
      throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(like.getTimeLocal());
    into.putNextEntry(entry);
    into.write(bytes);
    into.closeEntry();
  }
}
