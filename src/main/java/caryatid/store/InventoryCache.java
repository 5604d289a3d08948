package caryatid.store;

import io.ocfl.core.cache.Cache;
import io.ocfl.core.model.Inventory;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Holds inventories that the library has read, for as long as one repository is open. */
final class InventoryCache implements Cache<String, Inventory> {
  private final Map<String, Inventory> held = new HashMap<>();

  @Override
  public Inventory get(String key, Function<String, Inventory> loader) {
    Inventory known = held.get(key);
    if (known == null) {
      known = loader.apply(key);
      held.put(key, known);
    }
    return known;
  }

  @Override
  public void put(String key, Inventory value) {
    held.put(key, value);
  }

  @Override
  public void invalidate(String key) {
    held.remove(key);
  }

  @Override
  public void invalidateAll() {
    held.clear();
  }

  @Override
  public boolean contains(String key) {
    return held.containsKey(key);
  }
}
