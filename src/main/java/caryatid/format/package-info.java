/**
 * What is written to disk for programs, spelled out: explicit, versioned JSON, written and read
 * over the streaming API, with a reader for each version that was ever written.
 *
 * <p>No key, word or code is taken from the name of a class, a component or a constant, so that the
 * program's own names may change while the files stay. May use {@code entry}, {@code alignment} and
 * what they use; the JSON library.
 *
 * <p>Entry points: {@link caryatid.format.ResultJson}, {@link caryatid.format.EntryJson}.
 */
package caryatid.format;
