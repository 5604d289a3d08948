/**
 * The commands: they parse, ask at a terminal and print. What is decided is decided in {@code
 * usecase}. May use {@code usecase}, {@code wording}, {@code entry}, {@code remark} and the values
 * that use cases take and give, which the architecture test lists; picocli.
 */
package caryatid.cli;
