/** The parts of an S-cam brake as they lie on the bench, one record per kind. */
@NullMarked
package org.brakerules.model.part;

import org.jspecify.annotations.NullMarked;
