/** What is measured, one idea per class, in processes of their own. */
@NullMarked
package org.brakerules.benchmark.speed;

import org.jspecify.annotations.NullMarked;
