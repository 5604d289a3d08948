/**
 * A fitting record for a clinic's record system: one HL7 FHIR R4 transaction bundle in a file
 * ({@link caryatid.exchange.BundleRecord}), and the way to such a system. May use {@code usecase}
 * and what it uses; the JSON library, {@code java.net.http}.
 */
package caryatid.exchange;
