/**
 * Many states checked in one go: found in folders or a list, each by itself, on all processors; the
 * findings in one table. What was checked before is taken over.
 */
package caryatid.usecase.batch;
