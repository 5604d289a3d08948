/**
 * The files a user names: {@link caryatid.usecase.file.FileAccess} reads and writes them, and
 * {@link caryatid.usecase.file.LocalFiles} does so on this computer. May use {@code disk} for how
 * they reach the disk, and {@code recording.model} for named bytes.
 */
package caryatid.usecase.file;
