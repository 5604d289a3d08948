/**
 * Every sentence a person reads, made from typed remarks, problems and results; numbers in the
 * language's own way. The only package that holds sentences. May use the packages of results.
 */
package caryatid.wording;
