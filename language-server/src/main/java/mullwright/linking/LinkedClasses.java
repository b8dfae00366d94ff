package mullwright.linking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Classes that belong together, each with the classes its lambdas have become. */
final class LinkedClasses {
  private final Map<String, ClassNode> classes = new LinkedHashMap<>();
  private final Map<String, Map<String, byte[]>> made = new LinkedHashMap<>();
  private final Set<ClassNode> changed = new LinkedHashSet<>();
  private final Services services;
  private final Set<String> listed = new LinkedHashSet<>();

  /**
   * @param bytes the classes by their names ({@code mullwright/model/Wall}); all that share a nest
   * @param services what they look for at run time
   */
  LinkedClasses(Map<String, byte[]> bytes, Services services) {
    this.services = services;
    bytes.forEach(
        (name, code) -> {
          ClassNode type = new ClassNode();
          new ClassReader(code).accept(type, 0);
          classes.put(name, type);
        });
    classes.values().forEach(this::link);
  }

  /**
   * A class as linked, then what its lambdas have become; nothing where the class stays as it is.
   */
  Map<String, byte[]> instead(String name) {
    ClassNode type = classes.get(name);
    if (type == null || !changed.contains(type)) {
      return Map.of();
    }
    Map<String, byte[]> instead = new LinkedHashMap<>();
    ClassWriter writer = new ClassWriter(0);
    type.accept(writer);
    instead.put(name, writer.toByteArray());
    instead.putAll(made.getOrDefault(name, Map.of()));
    return instead;
  }

  private void link(ClassNode type) {
    List<Lambdas> all = new ArrayList<>();
    Map<String, Lambdas> open = new LinkedHashMap<>();
    for (MethodNode method : type.methods) {
      if (RecordMethods.write(type, method)) {
        changed.add(type);
      }
      for (String service : services.link(method)) {
        if (listed.add(service)) {
          made.computeIfAbsent(type.name, any -> new LinkedHashMap<>())
              .put(Services.lister(service), services.listing(service));
        }
        changed.add(type);
      }
      int depth = method.maxStack;
      for (AbstractInsnNode instruction : method.instructions.toArray()) {
        if (instruction instanceof InvokeDynamicInsnNode site && Lambda.isMadeBy(site)) {
          Lambdas together = open.get(company(site));
          if (together == null || together.isFull()) {
            together = new Lambdas(type.name + "$$" + all.size());
            all.add(together);
            open.put(company(site), together);
          }
          // what it holds, and its number
          method.maxStack = depth + 1;
          method.instructions.insert(site, together.take(site));
          method.instructions.remove(site);
        }
      }
    }
    if (!all.isEmpty()) {
      join(type, all);
    }
  }

  /**
   * Which lambdas may be of one class. The methods that the library's interfaces bring along do not
   * contradict each other; of others nothing is known.
   */
  private static String company(InvokeDynamicInsnNode site) {
    String face = Type.getReturnType(site.desc).getInternalName();
    return face.startsWith("java/") ? "java/" : face;
  }

  /** The body of a lambda is a private method: only a member of the nest may call it. */
  private void join(ClassNode type, List<Lambdas> all) {
    ClassNode host = type.nestHostClass == null ? type : classes.get(type.nestHostClass);
    List<String> nest = new ArrayList<>();
    if (host.nestMembers != null) {
      nest.addAll(host.nestMembers);
    }
    Map<String, byte[]> siblings = made.computeIfAbsent(type.name, any -> new LinkedHashMap<>());
    for (Lambdas together : all) {
      nest.add(together.name());
      siblings.put(together.name(), together.bytes(type, host.name));
    }
    host.nestMembers = nest;
    changed.add(host);
    changed.add(type);
  }
}
