package org.brakerules.internal.finalcheck;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Source;
import org.brakerules.model.reading.Station;

/**
 * One row of the table of final checks.
 *
 * @param id the id, such as {@code FINAL-180}
 * @param ofVehicle whether it is made once for the vehicle
 * @param steps the ids of the steps of a plan that ask for it
 * @param question what is asked
 * @param how how it is proved
 * @param limits the ids of the limits that its reading meets; empty if it is no reading
 * @param station where the reading is taken; empty if the part has no stations
 * @param consequence what follows if it fails
 * @param remedy what to do if it fails
 * @param releases whether nothing is released before it passed
 * @param source where it comes from
 */
record FinalRow(
    String id,
    boolean ofVehicle,
    List<String> steps,
    String question,
    String how,
    List<String> limits,
    Optional<Station> station,
    String consequence,
    String remedy,
    boolean releases,
    List<Source> source) {}
