package mullwright.linking;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/** A program linked ahead says what it said before: the compiler and the Java machine are asked. */
class LinkAheadTest {
  @TempDir Path folder;
  private Path jar;

  @BeforeEach
  void compile() throws IOException {
    Path source = folder.resolve("Shapes.java");
    try (InputStream in = LinkAheadTest.class.getResourceAsStream("/linking/Shapes.txt")) {
      Files.copy(in, source);
    }
    Path classes = folder.resolve("classes");
    int failed =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "--release", "17", "-d", classes.toString(), source.toString());
    assertThat(failed).isZero();
    jar = folder.resolve("shapes.jar");
    pack(classes, jar);
  }

  private static void pack(Path classes, Path jar) throws IOException {
    try (Stream<Path> all = Files.walk(classes);
        OutputStream bytes = Files.newOutputStream(jar);
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile).sorted()::iterator) {
        ZipEntry entry = new ZipEntry(classes.relativize(file).toString().replace('\\', '/'));
        entry.setLastModifiedTime(FileTime.fromMillis(1_700_000_000_000L));
        out.putNextEntry(entry);
        Files.copy(file, out);
        out.closeEntry();
      }
      out.putNextEntry(new ZipEntry("META-INF/services/shapes.Shapes$Sided"));
      out.write("shapes.Shapes$Triangle # three\n\nshapes.Shapes$Square\n".getBytes(UTF_8));
      out.closeEntry();
      out.putNextEntry(new ZipEntry("other/words.txt"));
      out.write(new byte[] {1, 2, 3});
      out.closeEntry();
    }
  }

  private static String said(Path jar) throws ReflectiveOperationException, IOException {
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
      return (String) loader.loadClass("shapes.Shapes").getMethod("all").invoke(null);
    }
  }

  @Test
  void everyShapeOfLambdaAndRecordDoesWhatItDid() throws Exception {
    String before = said(jar);
    assertThat(before.lines().count()).isGreaterThan(40);
    LinkAhead.jar(jar, "shapes/");
    assertThat(said(jar)).isEqualTo(before);
  }

  @Test
  void nothingIsLeftToBeLinkedButWhatCanBeSerialised() throws IOException {
    assertThat(sites(jar)).contains("metafactory", "altMetafactory", "equals", "hashCode");
    LinkAhead.jar(jar, "shapes/");
    assertThat(sites(jar)).containsOnly("altMetafactory", "toString");
  }

  @Test
  void providersOfWhichAllAreTakenAreListedAhead() throws IOException {
    assertThat(lookedFor(jar)).containsExactly("iterator", "forEach", "findFirst", "iterator");
    LinkAhead.jar(jar, "shapes/");
    // the first alone may be meant, and of what the jar does not list nothing is known
    assertThat(lookedFor(jar)).containsExactly("findFirst", "iterator");
  }

  /** How what is looked for at run time is used. */
  private static List<String> lookedFor(Path jar) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      return zip.stream()
          .filter(entry -> entry.getName().endsWith(".class"))
          .flatMap(entry -> type(zip, entry).methods.stream())
          .flatMap(method -> Stream.of(method.instructions.toArray()))
          .filter(MethodInsnNode.class::isInstance)
          .map(MethodInsnNode.class::cast)
          .filter(call -> call.owner.equals("java/util/ServiceLoader"))
          .map(call -> call.name)
          .filter(name -> !name.equals("load"))
          .toList();
    }
  }

  /** What the call sites ask of the Java machine: a lambda's factory, or a record's method. */
  private static List<String> sites(Path jar) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      return zip.stream()
          .filter(entry -> entry.getName().endsWith(".class"))
          .flatMap(entry -> type(zip, entry).methods.stream())
          .flatMap(method -> Stream.of(method.instructions.toArray()))
          .filter(InvokeDynamicInsnNode.class::isInstance)
          .map(InvokeDynamicInsnNode.class::cast)
          .filter(site -> !site.bsm.getName().startsWith("makeConcat"))
          .map(site -> site.bsm.getName().equals("bootstrap") ? site.name : site.bsm.getName())
          .distinct()
          .toList();
    }
  }

  private static ClassNode type(ZipFile zip, ZipEntry entry) {
    ClassNode type = new ClassNode();
    try (InputStream in = zip.getInputStream(entry)) {
      new ClassReader(in).accept(type, 0);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
    return type;
  }

  @Test
  void theSameJarGivesTheSameBytesAndTheRestStays() throws IOException {
    Path other = folder.resolve("other.jar");
    Files.copy(jar, other);
    LinkAhead.jar(jar, "shapes/");
    LinkAhead.jar(other, "shapes/");
    assertThat(other).hasSameBinaryContentAs(jar);
    try (ZipFile zip = new ZipFile(jar.toFile());
        InputStream in = zip.getInputStream(zip.getEntry("other/words.txt"))) {
      assertThat(in.readAllBytes()).containsExactly(1, 2, 3);
    }
    LinkAhead.jar(other, "shapes/");
    assertThat(other).as("nothing is left to do").hasSameBinaryContentAs(jar);
  }

  @Test
  void aFolderThatIsNotMeantStaysAsItIs() throws IOException {
    List<String> before = sites(jar);
    LinkAhead.jar(jar, "mullwright/");
    assertThat(sites(jar)).isEqualTo(before);
  }
}
