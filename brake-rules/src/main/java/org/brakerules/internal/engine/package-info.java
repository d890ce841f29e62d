/** The one place that knows the rule engine. */
@NullMarked
package org.brakerules.internal.engine;

import org.jspecify.annotations.NullMarked;
