/**
 * What is on the pages of a report: text, tables and drawings, in whatever format it is written.
 */
package caryatid.report.pages;
