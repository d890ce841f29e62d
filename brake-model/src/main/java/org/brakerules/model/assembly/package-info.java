/** What was recorded of the finished work, for the final check. */
@NullMarked
package org.brakerules.model.assembly;

import org.jspecify.annotations.NullMarked;
