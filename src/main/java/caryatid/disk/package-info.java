/**
 * How files reach the disk: {@link caryatid.disk.DurableFiles} writes and moves them so that they
 * are the old or the new ones whatever happens, and are on the disk when it returns; {@link
 * caryatid.disk.FilePermissions} says who may read them. A room below {@code store}, {@code clinic}
 * and {@code usecase.file}, which all write files and may not use one another for it. May use the
 * JDK alone.
 */
package caryatid.disk;
