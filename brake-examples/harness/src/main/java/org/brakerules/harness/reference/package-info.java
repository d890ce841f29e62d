/** The reference pages for auditors, made from the rule base itself. */
@NullMarked
package org.brakerules.harness.reference;

import org.jspecify.annotations.NullMarked;
