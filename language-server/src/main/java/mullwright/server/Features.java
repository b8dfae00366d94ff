package mullwright.server;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** Finds every {@link Feature} by itself. */
final class Features {
  private Features() {}

  /** All features, in the order of their class names, so that no run differs from another. */
  static List<Feature> all() {
    List<Feature> features = new ArrayList<>();
    ServiceLoader.load(Feature.class, Feature.class.getClassLoader()).forEach(features::add);
    features.sort(Comparator.comparing(feature -> feature.getClass().getName()));
    return features;
  }
}
