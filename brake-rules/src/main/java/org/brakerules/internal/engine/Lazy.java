package org.brakerules.internal.engine;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is made when it is first asked for, and then kept. */
final class Lazy<T> implements Supplier<T> {

  private final Supplier<T> maker;
  private volatile @Nullable T made;

  Lazy(Supplier<T> maker) {
    this.maker = maker;
  }

  @Override
  public T get() {
    T known = made;
    return known == null ? make() : known;
  }

  private synchronized T make() {
    T known = made;
    if (known == null) {
      known = maker.get();
      made = known;
    }
    return known;
  }
}
