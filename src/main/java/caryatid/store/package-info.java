/**
 * The fitting records on disk: one OCFL 1.1 object per prosthesis (Oxford Common File Layout),
 * every addition a new immutable version with its entry as one small JSON file and its files
 * verbatim. Locks, recovery after a crash, verifying, packing and unpacking. Entry point: {@link
 * caryatid.store.Store}. An entry goes from there through {@link caryatid.store.EntryWriter}, which
 * checks it, to {@link caryatid.store.VersionWriter}, which has the library write a new version in
 * the staging area; {@link caryatid.store.DurableStorage} moves that into the record, and {@link
 * caryatid.disk.DurableFiles} forces it to the disk. May use {@code fitting} and what it uses,
 * {@code disk}; the store's library and Jackson.
 */
package caryatid.store;
