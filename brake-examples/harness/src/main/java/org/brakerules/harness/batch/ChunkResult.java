package org.brakerules.harness.batch;

/**
 * What became of a chunk, ready to be appended.
 *
 * @param decided the lines with decisions, packed if the output is
 * @param rejected the rejects, packed if their file is
 * @param tally what was decided
 * @param after the input behind the chunk
 * @param position how many bytes of the input file were read by then
 */
@SuppressWarnings("ArrayRecordComponent") // handed on once and never compared
record ChunkResult(byte[] decided, byte[] rejected, Tally tally, InputMark after, long position) {}
