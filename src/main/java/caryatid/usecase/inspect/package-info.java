/**
 * Inspecting an export: what the program understands of it, what it still needs to know, and
 * whether it holds a stand. Start with {@link caryatid.usecase.inspect.Inspect}.
 */
package caryatid.usecase.inspect;
