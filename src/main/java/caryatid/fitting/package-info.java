/**
 * A fitting record as a value: its entries, which of them hold and since when, what is damaged or
 * cannot be read, and what may be added. Entry point: {@link caryatid.fitting.FittingRecord}. Pure;
 * may use {@code format} and what it uses. The bytes lie in {@code store}.
 */
package caryatid.fitting;
