package org.brakerules.harness.batch;

import java.io.InputStream;

/**
 * An input of jobs, one a line.
 *
 * @param name its name; one that ends in {@code .gz} has to be packed
 * @param stream its bytes from the beginning, plain or packed with gzip
 */
public record NamedInput(String name, InputStream stream) {}
