/**
 * From results and drawings to the page for the fitting record (PDF), and to JSON and back. May use
 * {@code chart}, {@code wording} and the packages of results; the PDF and JSON libraries.
 */
package caryatid.report;
