package mullwright.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Processes statements that place things by other things, each after those it leans on, so that the
 * order of the text does not matter.
 */
final class InOrder<T> {
  private final List<Node<T>> nodes = new ArrayList<>();
  private final Map<String, List<Node<T>>> definers = new HashMap<>();

  private static final class Node<T> {
    final T statement;
    final Set<String> defines;
    final Set<String> needs;
    final List<Node<T>> waiting = new ArrayList<>();
    int open;
    boolean done;

    Node(T statement, Collection<String> defines, Collection<String> needs) {
      this.statement = statement;
      this.defines = new LinkedHashSet<>(defines);
      this.needs = new LinkedHashSet<>(needs);
    }
  }

  /**
   * @param defines the names it makes
   * @param needs the names it leans on; those nothing makes are not waited for
   */
  void add(T statement, Collection<String> defines, Collection<String> needs) {
    Node<T> node = new Node<>(statement, defines, needs);
    nodes.add(node);
    for (String name : node.defines) {
      definers.computeIfAbsent(name, key -> new ArrayList<>()).add(node);
    }
  }

  /**
   * Hands each statement on once; those that stand in a circle go to {@code circular} (the first of
   * each circle, with its names), and what leans on them to nobody.
   */
  void run(Consumer<T> process, BiConsumer<T, List<String>> circular) {
    Deque<Node<T>> ready = new ArrayDeque<>();
    for (Node<T> node : nodes) {
      for (String name : node.needs) {
        for (Node<T> definer : definers.getOrDefault(name, List.of())) {
          definer.waiting.add(node);
          node.open++;
        }
      }
    }
    for (Node<T> node : nodes) {
      if (node.open == 0) {
        ready.add(node);
      }
    }
    while (!ready.isEmpty()) {
      Node<T> node = ready.poll();
      node.done = true;
      process.accept(node.statement);
      for (Node<T> next : node.waiting) {
        if (--next.open == 0) {
          ready.add(next);
        }
      }
    }
    reportCircles(circular);
  }

  private void reportCircles(BiConsumer<T, List<String>> circular) {
    Set<Node<T>> seen = new HashSet<>();
    for (Node<T> node : nodes) {
      List<Node<T>> path = new ArrayList<>();
      Set<Node<T>> onPath = new HashSet<>();
      List<String> names = new ArrayList<>();
      Node<T> at = node.done ? null : node;
      while (at != null && seen.add(at)) {
        path.add(at);
        onPath.add(at);
        String name = openNeed(at);
        names.add(name);
        at = name == null ? null : openDefiner(name);
      }
      if (at != null && onPath.contains(at)) {
        int start = path.indexOf(at);
        circular.accept(at.statement, names.subList(start, names.size()));
      }
    }
  }

  private String openNeed(Node<T> node) {
    for (String name : node.needs) {
      if (openDefiner(name) != null) {
        return name;
      }
    }
    return null;
  }

  private Node<T> openDefiner(String name) {
    for (Node<T> definer : definers.getOrDefault(name, List.of())) {
      if (!definer.done) {
        return definer;
      }
    }
    return null;
  }
}
