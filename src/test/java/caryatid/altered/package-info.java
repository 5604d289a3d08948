/** Reports that somebody altered, in every way we could think of. */
package caryatid.altered;
