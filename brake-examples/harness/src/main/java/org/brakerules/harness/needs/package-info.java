/** What has to be looked at and measured before a brake can be decided. */
@NullMarked
package org.brakerules.harness.needs;

import org.jspecify.annotations.NullMarked;
