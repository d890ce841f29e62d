/** The kits and loose parts that a shop can buy. */
@NullMarked
package org.brakerules.model.kit;

import org.jspecify.annotations.NullMarked;
