/** The rule language: its header, fact types, properties and verdicts. */
@NullMarked
package org.brakerules.linter.internal.language;

import org.jspecify.annotations.NullMarked;
