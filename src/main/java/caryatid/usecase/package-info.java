/**
 * What one can do with the program, a class each; the only place that composes the steps. In the
 * middle stands {@link caryatid.usecase.Check}: named bytes in, one result out. Use cases take
 * values, {@link caryatid.usecase.Records} and {@link caryatid.usecase.file.FileAccess}, and return
 * values that {@code wording} can say; they neither print nor ask. May use every package but the
 * faces.
 */
package caryatid.usecase;
