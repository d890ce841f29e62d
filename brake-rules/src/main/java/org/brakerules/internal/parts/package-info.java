/** Makes the parts list of a job from its decisions and the tables of quantities. */
@NullMarked
package org.brakerules.internal.parts;

import org.jspecify.annotations.NullMarked;
