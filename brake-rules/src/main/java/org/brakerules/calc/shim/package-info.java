/** Which shims bring an end play inside its band. */
@NullMarked
package org.brakerules.calc.shim;

import org.jspecify.annotations.NullMarked;
