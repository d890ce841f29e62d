package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A disk on which the run is killed at one of its calls, or which is full after some bytes. Of a
 * write at which it happens half is there. It never waits for the real disk, since it knows itself
 * what was synced.
 */
final class FailingDisk implements Disk {

  /** The run is killed here. */
  static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  private final RealDisk disk = new RealDisk();
  private final Map<Path, Long> onDisk = new LinkedHashMap<>();
  private final long killedAt;
  private final boolean losesWhatWasNotSynced;
  private long room;
  private long calls;

  private FailingDisk(long killedAt, boolean losesWhatWasNotSynced, long room) {
    this.killedAt = killedAt;
    this.losesWhatWasNotSynced = losesWhatWasNotSynced;
    this.room = room;
  }

  /**
   * A run that is killed.
   *
   * @param call at which call, from 1
   * @param losesWhatWasNotSynced whether the power fails as well, so that half of what was not
   *     synced is lost
   */
  static FailingDisk killedAt(long call, boolean losesWhatWasNotSynced) {
    return new FailingDisk(call, losesWhatWasNotSynced, Long.MAX_VALUE);
  }

  /** A disk with room for so many bytes. */
  static FailingDisk fullAfter(long bytes) {
    return new FailingDisk(Long.MAX_VALUE, false, bytes);
  }

  /** A disk on which nothing happens. */
  static FailingDisk sound() {
    return fullAfter(Long.MAX_VALUE);
  }

  @Override
  public OpenFile open(Path file) throws FileSystemException {
    step();
    OpenFile opened = disk.open(file);
    onDisk.put(file, opened.size());
    return new Opened(file, opened);
  }

  @Override
  public boolean exists(Path file) {
    return disk.exists(file);
  }

  @Override
  public void replace(Path file, Path place) throws FileSystemException {
    step();
    onDisk.remove(file);
    move(file, place);
    step();
  }

  @Override
  public void delete(Path file) throws FileSystemException {
    step();
    disk.delete(file);
    step();
  }

  private static void move(Path file, Path place) {
    try {
      Files.move(file, place, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void step() {
    calls++;
    if (calls == killedAt) {
      if (losesWhatWasNotSynced) {
        onDisk.forEach(FailingDisk::loseHalf);
      }
      throw new Killed();
    }
  }

  private static void loseHalf(Path file, long synced) {
    try {
      if (Files.exists(file)) {
        long half = synced + Math.max(0, Files.size(file) - synced) / 2;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
          channel.truncate(half);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private final class Opened implements OpenFile {

    private final Path file;
    private final OpenFile opened;

    Opened(Path file, OpenFile opened) {
      this.file = file;
      this.opened = opened;
    }

    @Override
    public long size() throws FileSystemException {
      return opened.size();
    }

    @Override
    public void cutTo(long length) throws FileSystemException {
      step();
      opened.cutTo(length);
      onDisk.merge(file, length, Math::min);
    }

    @Override
    public void append(byte[] bytes) throws FileSystemException {
      byte[] half = Arrays.copyOf(bytes, bytes.length / 2);
      opened.append(half);
      step();
      room -= bytes.length;
      if (room < 0) {
        throw new FileSystemException(file.toString(), null, "No space left on device");
      }
      opened.append(Arrays.copyOfRange(bytes, half.length, bytes.length));
      step();
    }

    @Override
    public void sync() throws FileSystemException {
      step();
      onDisk.put(file, opened.size());
    }

    @Override
    public void close() throws FileSystemException {
      opened.close();
    }
  }
}
