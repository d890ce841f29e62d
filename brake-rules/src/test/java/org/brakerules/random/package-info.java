/** Random brake jobs for the tests; the same seed always gives the same job. */
package org.brakerules.random;
