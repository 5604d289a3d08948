/**
 * What the entries of a fitting record say, in codes and free text of no language: one record for
 * each kind of entry, its ranges checked. Entry point: {@link caryatid.entry.Entry}. Pure; may use
 * {@code alignment} and what it uses.
 */
package caryatid.entry;
