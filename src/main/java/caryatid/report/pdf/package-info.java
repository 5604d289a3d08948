/** Pages as PDF, with the files kept inside, and those files read back. */
package caryatid.report.pdf;
