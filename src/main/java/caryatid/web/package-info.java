/**
 * The window: the whole fitting in a page of one's own browser, served to this computer alone. A
 * face beside the command line: it parses, asks and shows. Entry point: {@link
 * caryatid.web.Window}. May use the use cases, {@code wording}, {@code entry}, the values that use
 * cases take and give, and the JDK's server; no importer, store, analysis or painter.
 */
package caryatid.web;
