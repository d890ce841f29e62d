package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Why a file could not be written, in words for its user. */
record WriteFailure(Path file, IOException failure) {

  String inWords() {
    if (failure instanceof FileAlreadyExistsException inTheWay) {
      return inTheWay.getFile() + " is a file, where a folder is needed";
    }
    if (Files.isDirectory(file)) {
      return file + " is a folder, where a file is to be written";
    }
    if (failure instanceof AccessDeniedException denied) {
      return denied.getFile() + ": permission to write is denied";
    }
    if (failure instanceof FileSystemException known && known.getReason() != null) {
      return file + " cannot be written (" + known.getReason() + ")";
    }
    return file + " cannot be written";
  }
}
