/** What people do most, done once with a sample, so that the next start is fast. */
package caryatid.rehearsal;
