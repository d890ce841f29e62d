package org.brakerules.record;

import org.brakerules.model.decision.Source;

/**
 * How long a record is kept, as published. The law where the vehicle runs decides.
 *
 * @param id the id, such as {@code maintenance-record}
 * @param what the record
 * @param keep how long
 * @param source where the period was read
 */
public record Retention(String id, String what, String keep, Source source) {}
