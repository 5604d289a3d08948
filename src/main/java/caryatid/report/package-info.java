/**
 * The entry points: a result or a record as a report (PDF, HTML), as pictures and as CSV. May use
 * {@code chart}, {@code wording}, {@code format} and the packages of results.
 */
package caryatid.report;
