/** Rules as they were written, taken apart: what a rule on trial is made of. */
@NullMarked
package org.brakerules.internal.rule;

import org.jspecify.annotations.NullMarked;
