/** Damaged files of every kind, given to the command line in a program with little memory. */
package caryatid.fuzz;
