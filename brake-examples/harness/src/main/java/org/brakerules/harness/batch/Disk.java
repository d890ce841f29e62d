package org.brakerules.harness.batch;

import java.io.Closeable;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/**
 * Every way in which a batch changes files. After each single call a run may be killed; the tests
 * put a disk in its place that does just that.
 */
interface Disk {

  /**
   * Opens a file to append to, and makes it if it is not there. Nobody else has it open until it is
   * closed.
   */
  OpenFile open(Path file) throws FileSystemException;

  boolean exists(Path file);

  /**
   * Puts a file in the place of another in one go, so that either the one or the other is there.
   */
  void replace(Path file, Path place) throws FileSystemException;

  /** Deletes a file if it is there. */
  void delete(Path file) throws FileSystemException;

  /** A file that is written to. */
  interface OpenFile extends Closeable {

    long size() throws FileSystemException;

    /** Cuts off what is behind a length, and goes on from there. */
    void cutTo(long length) throws FileSystemException;

    void append(byte[] bytes) throws FileSystemException;

    /** Waits until everything is on the disk. */
    void sync() throws FileSystemException;

    @Override
    void close() throws FileSystemException;
  }
}
