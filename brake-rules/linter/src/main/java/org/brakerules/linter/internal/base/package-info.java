/** The rule base as it was read: folders, tables, rules, patterns, conditions. */
@NullMarked
package org.brakerules.linter.internal.base;

import org.jspecify.annotations.NullMarked;
