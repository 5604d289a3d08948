/**
 * What is written to disk, and one reader for each version that was ever written. Entry point for
 * entries: {@link caryatid.format.EntryJson}. May use {@code entry} and what it uses; Jackson.
 */
package caryatid.format;
