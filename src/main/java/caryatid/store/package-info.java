/**
 * The fitting records on disk: one OCFL 1.1 object per prosthesis (Oxford Common File Layout),
 * every addition a new immutable version with its entry as one small JSON file and its files
 * verbatim. Locks, recovery after a crash, verifying, packing and unpacking. Entry point: {@link
 * caryatid.store.Store}. May use {@code fitting} and what it uses; the store's library and Jackson.
 */
package caryatid.store;
