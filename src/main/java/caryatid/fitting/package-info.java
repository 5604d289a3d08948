/**
 * The fitting record on disk: one OCFL 1.1 object per prosthesis (Oxford Common File Layout), every
 * addition a new immutable version with its entry as one small JSON file and its files verbatim.
 * Entry point: {@link caryatid.fitting.Store}. What an entry holds is said by {@link
 * caryatid.fitting.EntryKind}'s forms, once for JSON, YAML, command line and terminal. May use the
 * packages of values ({@code alignment} and what it uses); the store's library and Jackson.
 */
package caryatid.fitting;
