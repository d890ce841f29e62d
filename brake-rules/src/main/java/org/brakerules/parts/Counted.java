package org.brakerules.parts;

/**
 * So many pieces of an item.
 *
 * @param item the item
 * @param pieces how many
 */
public record Counted(Item item, int pieces) {}
