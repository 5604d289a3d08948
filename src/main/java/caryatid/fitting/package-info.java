/**
 * The fitting record on disk: one OCFL 1.1 object per prosthesis (Oxford Common File Layout), every
 * addition a new immutable version with its entry as one small JSON file and its files verbatim.
 * Entry point: {@link caryatid.fitting.Store}. May use {@code entry}, {@code format} and what they
 * use; the store's library and Jackson.
 */
package caryatid.fitting;
