package org.brakerules.internal.table;

import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;

/**
 * One part and what surrounds it: all that a table row can ask about.
 *
 * @param axleKind what its axle does
 * @param layout how its brake is built
 * @param part the part
 */
public record Subject(AxleKind axleKind, Layout layout, Part part) {}
