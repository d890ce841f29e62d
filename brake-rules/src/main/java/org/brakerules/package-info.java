/** The rule base for S-cam brake jobs: load it once, ask it for decisions. */
@NullMarked
package org.brakerules;

import org.jspecify.annotations.NullMarked;
