/** The commands. May use {@code workflow}, {@code wording} and the packages of results; picocli. */
package caryatid.cli;
