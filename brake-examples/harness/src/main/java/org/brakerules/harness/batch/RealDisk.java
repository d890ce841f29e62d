package org.brakerules.harness.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The disk of this machine. */
final class RealDisk implements Disk {

  /** Something that can fail on a file. */
  private interface Step<T> {
    T take() throws IOException;
  }

  @Override
  public OpenFile open(Path file) throws FileSystemException {
    return of(
        file,
        () -> {
          boolean isNew = !Files.exists(file);
          FileChannel channel =
              FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          try {
            claim(file, channel);
          } catch (IOException failure) {
            channel.close();
            throw failure;
          }
          if (isNew) {
            syncFolder(file);
          }
          return new OpenChannel(file, channel);
        });
  }

  private static void claim(Path file, FileChannel channel) throws IOException {
    if (!isOurs(channel)) {
      throw new FileSystemException(file.toString(), null, "another brake batch is writing it");
    }
    channel.position(channel.size());
  }

  private static boolean isOurs(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException here) {
      return false;
    }
  }

  @Override
  public boolean exists(Path file) {
    return Files.exists(file);
  }

  @Override
  public void replace(Path file, Path place) throws FileSystemException {
    of(
        place,
        () ->
            Files.move(
                file, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING));
    syncFolder(place);
  }

  @Override
  public void delete(Path file) throws FileSystemException {
    of(file, () -> Files.deleteIfExists(file));
  }

  /** A new name is on the disk only when its folder is; some systems cannot be asked for that. */
  private static void syncFolder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      } catch (IOException unable) {
        return;
      }
    }
  }

  /** Lets every failure name its file. */
  private static <T> T of(Path file, Step<T> step) throws FileSystemException {
    try {
      return step.take();
    } catch (FileSystemException named) {
      throw named;
    } catch (IOException failure) {
      FileSystemException named =
          new FileSystemException(file.toString(), null, failure.getMessage());
      named.initCause(failure);
      throw named;
    }
  }

  private record OpenChannel(Path file, FileChannel channel) implements OpenFile {

    @Override
    public long size() throws FileSystemException {
      return of(file, channel::size);
    }

    @Override
    public void cutTo(long length) throws FileSystemException {
      of(file, () -> channel.truncate(length).position(length));
    }

    @Override
    public void append(byte[] bytes) throws FileSystemException {
      of(
          file,
          () -> {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
              channel.write(left);
            }
            return file;
          });
    }

    @Override
    public void sync() throws FileSystemException {
      of(
          file,
          () -> {
            channel.force(true);
            return file;
          });
    }

    @Override
    public void close() throws FileSystemException {
      of(
          file,
          () -> {
            channel.close();
            return file;
          });
    }
  }
}
