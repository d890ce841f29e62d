/**
 * Jobs and decisions as JSON: the one place that configures the JSON library.
 *
 * <p>A job is read strictly, in three steps: the document becomes a tree that knows the line and
 * column of each value, the tree becomes records, and all problems found on the way are reported
 * together.
 */
@NullMarked
package org.brakerules.model.json;

import org.jspecify.annotations.NullMarked;
