package org.brakerules.parts;

/**
 * Something by which the right part is known.
 *
 * @param name what is stated, such as {@code stroke class}
 * @param value what it must be, such as {@code long}
 */
public record Detail(String name, String value) {}
