/**
 * Two versions of the program, side by side in one JVM: an old one in a jar, and the one that is
 * built here. What both print, write and end with is compared byte for byte over the samples, the
 * specimens, records and many mutated exports. Runs only in the profile {@code differential}; see
 * DEVELOPERS.md.
 */
package caryatid.differential;
