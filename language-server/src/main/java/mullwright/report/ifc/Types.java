package mullwright.report.ifc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import mullwright.model.Part;

/** The parts of the catalog as types: profiles and make-ups of glass, each with its material. */
final class Types {
  private final StepFile file;
  private final GlobalIds ids;
  private final Shapes shapes;
  private final Map<Member, List<StepValue.Reference>> members = new LinkedHashMap<>();
  private final Map<Part.Glass, List<StepValue.Reference>> plates = new LinkedHashMap<>();

  /** A profile in what it is used as. */
  private record Member(Part.Profile profile, String use) {}

  Types(StepFile file, GlobalIds ids, Shapes shapes) {
    this.file = file;
    this.ids = ids;
    this.shapes = shapes;
  }

  /** A member is of a profile, used as {@code MULLION} or {@code TRANSOM}. */
  void member(StepValue.Reference of, Part.Profile profile, String use) {
    members.computeIfAbsent(new Member(profile, use), any -> new ArrayList<>()).add(of);
  }

  /** A plate is of a make-up. */
  void plate(StepValue.Reference of, Part.Glass glass) {
    plates.computeIfAbsent(glass, any -> new ArrayList<>()).add(of);
  }

  /** Writes all of them. */
  void write() {
    members.forEach(
        (member, of) -> {
          boolean mullion = member.use().equals("MULLION");
          String name = member.profile().name();
          type(
              "IFCMEMBERTYPE",
              name,
              "profile " + name + " " + member.use(),
              mullion ? "" : member.use(),
              mullion ? "MULLION" : "USERDEFINED",
              metal(member.profile()),
              of);
        });
    plates.forEach(
        (glass, of) ->
            type(
                "IFCPLATETYPE",
                glass.name(),
                "glass " + glass.name(),
                "",
                "CURTAIN_PANEL",
                layers(glass),
                of));
  }

  private void type(
      String entity,
      String name,
      String key,
      String elementType,
      String predefined,
      StepValue.Reference material,
      List<StepValue.Reference> of) {
    StepValue.Reference type =
        file.add(
            entity,
            ids.of(key),
            StepValue.NONE,
            StepValue.text(name),
            StepValue.NONE,
            StepValue.NONE,
            StepValue.NONE,
            StepValue.NONE,
            StepValue.text(name),
            StepValue.textOrNone(elementType),
            StepValue.word(predefined));
    relation("IFCRELDEFINESBYTYPE", "of " + key, of, type);
    relation("IFCRELASSOCIATESMATERIAL", "material of " + key, List.of(type), material);
  }

  private void relation(
      String entity, String key, List<StepValue.Reference> of, StepValue.Reference to) {
    file.add(
        entity,
        ids.of(key),
        StepValue.NONE,
        StepValue.NONE,
        StepValue.NONE,
        StepValue.list(of),
        to);
  }

  private StepValue.Reference metal(Part.Profile profile) {
    String metal = profile.metal().value();
    String words = profile.alloy().map(alloy -> metal + " " + alloy.value()).orElse(metal);
    StepValue.Reference one =
        file.add(
            "IFCMATERIALPROFILE",
            StepValue.text(profile.name()),
            StepValue.NONE,
            material(words, metal),
            shapes.section(profile),
            StepValue.NONE,
            StepValue.NONE);
    return file.add(
        "IFCMATERIALPROFILESET",
        StepValue.text(profile.name()),
        StepValue.NONE,
        StepValue.list(one),
        StepValue.NONE);
  }

  // layers from outdoors, as the catalog tells them
  private StepValue.Reference layers(Part.Glass glass) {
    List<StepValue.Reference> layers = new ArrayList<>();
    for (Part.Layer layer : glass.layers()) {
      String words = layer.words().stream().collect(Collectors.joining(" "));
      String name =
          switch (layer.what()) {
            case "ply" -> ("glass " + words).strip();
            case "space" -> words.isEmpty() ? "air space" : words;
            default -> (layer.what() + " " + words).strip();
          };
      layers.add(
          file.add(
              "IFCMATERIALLAYER",
              material(name, layer.what().equals("ply") ? "glass" : layer.what()),
              StepValue.real(layer.thickness()),
              StepValue.truth(false),
              StepValue.text(layer.what()),
              StepValue.NONE,
              StepValue.NONE,
              StepValue.NONE));
    }
    if (layers.isEmpty()) {
      return material(glass.name(), "glass");
    }
    return file.add(
        "IFCMATERIALLAYERSET",
        StepValue.list(layers),
        StepValue.text(glass.name()),
        StepValue.NONE);
  }

  private StepValue.Reference material(String name, String category) {
    return file.share(
        "IFCMATERIAL", StepValue.text(name), StepValue.NONE, StepValue.text(category));
  }
}
