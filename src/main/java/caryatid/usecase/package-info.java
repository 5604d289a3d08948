/**
 * The only place that composes the steps. Entry point: {@link caryatid.usecase.Check}: named bytes
 * in, one result out. May use every package but the faces.
 */
package caryatid.usecase;
