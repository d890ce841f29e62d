/** Puts a rule base on trial: runs it as its author left it, and changes it on purpose. */
@NullMarked
package org.brakerules.trial;

import org.jspecify.annotations.NullMarked;
