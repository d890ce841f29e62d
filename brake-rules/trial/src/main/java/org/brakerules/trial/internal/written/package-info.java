/** Takes rule files apart that the linter has read. */
@NullMarked
package org.brakerules.trial.internal.written;

import org.jspecify.annotations.NullMarked;
