package org.brakerules.model.job;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;

/**
 * One wheel end: how its brake is built, and the parts that were looked at.
 *
 * @param path the name of the wheel end
 * @param layout how the brake is built
 * @param parts the parts that were looked at, each at a place of its own
 */
public record WheelEnd(WheelEndPath path, Layout layout, List<Part> parts) {

  /**
   * Keeps its own copy of the parts.
   *
   * @throws IllegalArgumentException if a part belongs to another wheel end, or two parts have the
   *     same path
   */
  public WheelEnd {
    parts = List.copyOf(parts);
    Set<Place> taken = new HashSet<>();
    for (Part part : parts) {
      if (!part.wheelEnd().equals(path)) {
        throw new IllegalArgumentException(part.place() + " does not belong to " + path + ".");
      }
      if (!taken.add(part.place())) {
        throw new IllegalArgumentException(
            part.place() + " is there twice; number parts of one kind and station 1, 2, 3.");
      }
    }
  }

  /**
   * The parts this wheel end must be asked for in a job of the scope, in path order: those its
   * layout has for certain, and those of the hub where something stated leads to them.
   */
  public List<Place> expectedParts(Scope scope) {
    List<Place> ofLayout = layout.expectedParts(path, scope);
    List<Place> ofHub = HubParts.ledTo(this, scope);
    return ofHub.isEmpty()
        ? ofLayout
        : Stream.concat(ofLayout.stream(), ofHub.stream()).distinct().sorted().toList();
  }
}
