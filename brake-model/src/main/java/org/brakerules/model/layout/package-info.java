/** How a brake is built: the configurations that change the rules. */
@NullMarked
package org.brakerules.model.layout;

import org.jspecify.annotations.NullMarked;
