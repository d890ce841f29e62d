/** Judges the record of finished work against its plan. */
@NullMarked
package org.brakerules.internal.finalcheck;

import org.jspecify.annotations.NullMarked;
