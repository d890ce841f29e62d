package org.brakerules.internal.engine;

import java.util.function.Supplier;

/**
 * Lets the engine find its parts by the class loader it was itself loaded by. It looks for them by
 * that of the calling thread, where a host application may have anything: none, one that knows no
 * engine, or one with an engine of its own.
 */
final class OwnClassLoader {

  private OwnClassLoader() {}

  /** Does something under the own class loader, and gives the thread back what it had. */
  static <T> T with(Supplier<T> work) {
    Thread thread = Thread.currentThread();
    ClassLoader ofHost = thread.getContextClassLoader();
    thread.setContextClassLoader(OwnClassLoader.class.getClassLoader());
    try {
      return work.get();
    } finally {
      thread.setContextClassLoader(ofHost);
    }
  }
}
