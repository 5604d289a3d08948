package caryatid.usecase.file;

import java.nio.file.Path;

/**
 * Where something made is to be written.
 *
 * @param path the file
 * @param replace whether it may take the place of one that is there
 */
public record Output(Path path, boolean replace) {}
