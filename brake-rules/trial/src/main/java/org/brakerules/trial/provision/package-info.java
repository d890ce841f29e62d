/** What a rule base lays down, id by id, without anything that changes no verdict. */
@NullMarked
package org.brakerules.trial.provision;

import org.jspecify.annotations.NullMarked;
