package org.brakerules.internal.table;

import java.time.LocalDate;
import java.util.Optional;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;

/**
 * One part and what surrounds it: all that a table row can ask about.
 *
 * @param builtOn the day the vehicle was built; empty if not stated
 * @param axleKind what its axle does
 * @param layout how its brake is built
 * @param part the part
 */
public record Subject(Optional<LocalDate> builtOn, AxleKind axleKind, Layout layout, Part part) {}
