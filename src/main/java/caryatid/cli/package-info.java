/** The commands. May use {@code usecase}, {@code wording} and the packages of results; picocli. */
package caryatid.cli;
