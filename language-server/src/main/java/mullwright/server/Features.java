package mullwright.server;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;

/** Finds every {@link Feature} by itself. */
final class Features {
  private Features() {}

  /** All features, in the order of their class names, so that no run differs from another. */
  static List<Feature> all() {
    List<Feature> features = new ArrayList<>();
    ServiceLoader.load(Feature.class, Feature.class.getClassLoader()).forEach(features::add);
    // spelled out: the library's comparators are made at run time, at every start
    features.sort((one, other) -> one.getClass().getName().compareTo(other.getClass().getName()));
    return features;
  }
}
