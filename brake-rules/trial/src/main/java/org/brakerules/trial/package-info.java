/**
 * Puts a rule base on trial: runs it as its author left it, shows what its cases prove, and changes
 * it on purpose.
 */
@NullMarked
package org.brakerules.trial;

import org.jspecify.annotations.NullMarked;
