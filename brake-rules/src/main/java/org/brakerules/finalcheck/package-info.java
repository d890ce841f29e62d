/** The final check: what was recorded of the finished work, judged against its plan. */
@NullMarked
package org.brakerules.finalcheck;

import org.jspecify.annotations.NullMarked;
