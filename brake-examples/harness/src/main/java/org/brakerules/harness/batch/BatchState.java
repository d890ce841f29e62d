package org.brakerules.harness.batch;

/**
 * How far a run has come: what was on the disk for good when this was written.
 *
 * @param settings how it was called
 * @param input how far the input was read
 * @param decidedBytes how long the output is
 * @param rejectedBytes how long the file of the rejects is
 * @param finished whether the whole input is done, so that only the files have to take their places
 * @param tally what was decided
 */
record BatchState(
    Settings settings,
    InputMark input,
    long decidedBytes,
    long rejectedBytes,
    boolean finished,
    Tally tally) {}
