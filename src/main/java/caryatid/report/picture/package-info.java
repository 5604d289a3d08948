/** Drawings as SVG and PNG. */
package caryatid.report.picture;
