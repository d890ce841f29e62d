package org.brakerules.parts;

/**
 * A kit that holds fewer pieces of an item than what it is packed for needs.
 *
 * @param kitId the kit
 * @param item the item
 * @param holds how many are in one kit
 * @param needed how many one wheel end, or the axle, needs
 */
public record Shortfall(String kitId, Item item, int holds, int needed) {}
